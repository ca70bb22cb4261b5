import { beforeAll, describe, expect, it } from "vitest";
import { gaps } from "@/engine/gaps";
import { CALL_FORMAT, CALL_FORMAT_2, parseCall } from "@/engine/pattern";
import { madeDecisions, newestDecisions } from "@/features/results/data";
import { itemKey } from "../../src/features/results/mistakes/decision-copy";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { storeCall } from "@/features/testing/report/document-mutations";
import { decide } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { callDocument as callOf, reader } from "../factories/call";
import { makeViewer } from "./make-account";

let access: CallAccess;
let other: CallAccess;
let stranger: Viewer;

beforeAll(async () => {
  const designer = await makeViewer();
  stranger = await makeViewer();
  // Ann laid the girth flat and did not double it.
  const call = callOf([reader("ann", { bust: 50, length: 40 }), reader("bea", { bust: 101, length: 41 })]);
  const { callId } = await storeCall(designer, { call, title: "Invented call" });
  access = await callAccess(designer, callId, "editor");
  const theirs = callOf([reader("zoe", { bust: 101 })]);
  const { callId: otherId } = await storeCall(stranger, { call: theirs, title: "Another call" });
  other = await callAccess(stranger, otherId, "editor");
});

const annsBust = { tester: "ann", part: "readings", position: 0 } as const;

async function annCounts(): Promise<number> {
  const { cells } = gaps(await callDocument(access));
  return cells[0]?.reports ?? Number.NaN;
}

describe("a person's decision on a reading", () => {
  it("stands over the engine's, and taken back gives the same analysis again, byte for byte", async () => {
    const before = JSON.stringify(gaps(await callDocument(access)));
    expect(await annCounts()).toBe(1);
    await decide(access, { ...annsBust, decision: "keep" });
    expect(await annCounts()).toBe(2);
    await decide(access, { ...annsBust, decision: "set-aside" });
    expect(await annCounts()).toBe(1);
    await decide(access, { ...annsBust, decision: null });
    expect(JSON.stringify(gaps(await callDocument(access)))).toBe(before);
  });

  it("is stored with who decided and when, and with who changed it since", async () => {
    const where = { report: { tester: { code: "ann", callId: access.callId } } };
    const stored = () => database().decision.findFirstOrThrow({ where, include: { decidedBy: true } });
    const before = Date.now();
    await decide(access, { ...annsBust, decision: "keep" });
    const first = await stored();
    expect(first.decidedBy?.id).toBe(access.pattern.accountId);
    expect(first.decidedAt?.getTime()).toBeGreaterThanOrEqual(before);
    const editor = await makeViewer();
    const membership = { patternId: access.pattern.patternId, accountId: editor.accountId };
    await database().membership.create({ data: { ...membership, role: "editor" } });
    await decide(await callAccess(editor, access.callId, "editor"), { ...annsBust, decision: "set-aside" });
    expect(await stored()).toMatchObject({ decision: "exclude", decidedById: editor.accountId });
    const shown = (await madeDecisions(access, ["ann", "bea"])).get(itemKey(annsBust));
    expect(shown).toEqual({ decision: "set-aside", reason: "", by: editor.name, at: expect.any(Date) });
    expect(await madeDecisions(other, ["ann"])).toEqual(new Map());
    await decide(access, { ...annsBust, decision: null });
  });

  it("leaves the report as it was sent, and raises the version of the call", async () => {
    const version = async () =>
      (await database().call.findUniqueOrThrow({ where: { id: access.callId }, select: { version: true } })).version;
    const before = await version();
    const report = () => database().report.findFirst({ where: { tester: { code: "ann", callId: access.callId } } });
    const sent = await report();
    await decide(access, { ...annsBust, decision: "keep" });
    expect(await report()).toEqual(sent);
    expect(await version()).toBe(before + 1);
    // Said again, it changes nothing, and nothing is analysed again.
    await decide(access, { ...annsBust, decision: "keep" });
    expect(await version()).toBe(before + 1);
    await decide(access, { ...annsBust, decision: null });
  });

  it("may be another value, which is stored beside the typed one with its reason, and exported as call@2", async () => {
    const before = await callDocument(access);
    expect(before.format).toBe(CALL_FORMAT);
    const version = async () =>
      (await database().call.findUniqueOrThrow({ where: { id: access.callId }, select: { version: true } })).version;
    const first = await version();
    const used = { ...annsBust, decision: { use: 100.5 }, reason: "measured flat" };
    await decide(access, used);
    await decide(access, used);
    expect(await version()).toBe(first + 1);
    const document = await callDocument(access);
    expect(document.format).toBe(CALL_FORMAT_2);
    expect(document.testers[0]?.readings[0]).toMatchObject({ cm: 50, decision: { use: 100.5 } });
    expect(parseCall(JSON.parse(JSON.stringify(document)))).toMatchObject({ ok: true });
    expect(await annCounts()).toBe(2);
    const shown = (await newestDecisions(access, "ann")).get(itemKey(annsBust));
    expect(shown).toMatchObject({ decision: { use: 100.5 }, reason: "measured flat", by: expect.any(String) });
    expect(await newestDecisions(other, "ann")).toEqual(new Map());
    // An imported call@2 holds it again, without a reason, for documents have none.
    const { callId } = await storeCall(await makeViewer(), { call: document, title: "Taken along" });
    const again = await database().decision.findFirstOrThrow({ where: { report: { tester: { callId } } } });
    expect(again).toMatchObject({ decision: "keep", usedCm: 100.5, reason: "" });
    // Said otherwise since, nothing of the value stays.
    await decide(access, { ...annsBust, decision: "keep" });
    const where = { report: { tester: { code: "ann", callId: access.callId } } };
    expect(await database().decision.findFirstOrThrow({ where })).toMatchObject({ usedCm: null, reason: "" });
    await decide(access, { ...annsBust, decision: null });
  });

  it("uses no other value of a swatch, and none that is no length", async () => {
    const swatch = { tester: "ann", part: "swatches", position: 0 } as const;
    await expect(decide(access, { ...swatch, decision: { use: 10 } })).rejects.toMatchObject({ code: "not-found" });
    await expect(decide(access, { ...annsBust, decision: { use: -1 } })).rejects.toThrow();
    expect(await database().decision.count({ where: { report: { tester: { callId: access.callId } } } })).toBe(0);
  });

  it("is refused of what is not in the report, of another call's tester, and from those who have no part in it", async () => {
    const gone = { code: "not-found" };
    await expect(decide(access, { ...annsBust, position: 2, decision: "keep" })).rejects.toMatchObject(gone);
    await expect(decide(access, { ...annsBust, tester: "zoe", decision: "keep" })).rejects.toMatchObject(gone);
    await expect(decide(other, { ...annsBust, decision: "keep" })).rejects.toMatchObject(gone);
    const forged = { ...access, pattern: { ...access.pattern, accountId: stranger.accountId } };
    await expect(decide(forged, { ...annsBust, decision: "keep" })).rejects.toMatchObject(gone);
    const membership = { patternId: access.pattern.patternId, accountId: stranger.accountId };
    await database().membership.create({ data: { ...membership, role: "viewer" } });
    await expect(decide(forged, { ...annsBust, decision: "keep" })).rejects.toMatchObject(gone);
    expect(await database().decision.count({ where: { report: { tester: { callId: access.callId } } } })).toBe(0);
  });
});
