import { beforeAll, describe, expect, it } from "vitest";
import { callDocument as documentOf } from "@/features/calls/data";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { decide } from "@/features/testing/report/mutations";
import { sendReport } from "../../src/features/testing/report/send/send-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { callDocument, reader } from "../factories/call";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

let called: TestedCall;

beforeAll(async () => {
  called = await makeCall(callDocument([reader("brought", { bust: 101 })]));
});

const SWATCH = { fabric: "main", toolMm: "4", stitches: "20", across: "10", rows: "25", along: "10", washed: "yes" };

function swatchTyped() {
  return Object.entries(SWATCH).map(([part, becomes]) => ({ field: `swatch.1.${part}`, was: "", becomes }));
}

async function type(access: TesterAccess, texts: Readonly<Record<string, string>>): Promise<void> {
  const { typed } = await readDraft(access);
  await saveFields(
    access,
    Object.entries(texts).map(([field, becomes]) => ({ field, was: typed[field] ?? "", becomes })),
  );
}

async function send(access: TesterAccess): Promise<number> {
  return (await sendReport(access, (await readDraft(access)).version)).version;
}

const reportsOf = ({ testerId }: TesterAccess) =>
  database().report.findMany({ where: { testerId }, orderBy: { version: "asc" } });

const versionOf = async ({ callId }: TesterAccess) =>
  (await database().call.findUniqueOrThrow({ where: { id: callId }, select: { version: true } })).version;

describe("sending a report", () => {
  it("may be done with the swatch alone, and raises the version of the call", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, swatchTyped());
    const before = await versionOf(ann);
    expect(await send(ann)).toBe(1);
    expect(await versionOf(ann)).toBe(before + 1);
    const [report] = await reportsOf(ann);
    // By hand from the pattern: the counts of the size are filled in.
    expect(report?.document).toMatchObject({ size: "small", readings: [], worked: { width: 98, height: 100 } });
    expect(report?.revisionId).toBe(called.revisionId);
  });

  it("twice over, as by a phone that lost its connection, stores one version", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, swatchTyped());
    const { version } = await readDraft(ann);
    expect(await Promise.all([sendReport(ann, version), sendReport(ann, version)])).toEqual([
      { version: 1 },
      { version: 1 },
    ]);
    const raised = await versionOf(ann);
    expect(await sendReport(ann, version)).toEqual({ version: 1 });
    expect(await reportsOf(ann)).toHaveLength(1);
    expect(await versionOf(ann)).toBe(raised);
  });

  it("again after a change keeps every version, what was typed too", async () => {
    const ann = await makeTester(called, { unit: "in" });
    await saveFields(ann, swatchTyped());
    await send(ann);
    await type(ann, { "reading.length.1.value": "15 3/4" });
    expect(await send(ann)).toBe(2);
    // And back to what was sent first: that is a third version.
    await type(ann, { "reading.length.1.value": "" });
    expect(await send(ann)).toBe(3);
    const [first, second, third] = await reportsOf(ann);
    // By definition of the inch: 15.75 × 2.54.
    expect(second?.document).toMatchObject({ readings: [{ measurement: "length", cm: 15.75 * 2.54 }] });
    expect(second?.typed).toMatchObject({ "readings[0].cm": "15 3/4 in" });
    expect(third?.document).toEqual(first?.document);
  });

  it("leaves nothing changed since, however it was typed; then says which fields were changed, and forgets what was undone", async () => {
    const ann = await makeTester(called);
    const changed = async () => (await readDraft(ann)).changed;
    // None of this is stored as it was typed: a second device's key, no fabric, a unit behind, a text that cannot be read.
    await type(ann, { "swatch.3kq.toolMm": "4", "swatch.3kq.stitches": "20", "swatch.3kq.across": "10 cm" });
    await type(ann, { "swatch.3kq.rows": "25", "swatch.3kq.along": "10", hours: " 38 ", "worked.width": "abc" });
    expect(await changed()).toEqual([]);
    await send(ann);
    expect(await changed()).toEqual([]);
    await type(ann, { hours: "39" });
    expect(await changed()).toEqual(["hours"]);
    await type(ann, { hours: "38" });
    expect(await changed()).toEqual([]);
    await type(ann, { "worked.width": "98" });
    expect(await changed()).toEqual(["worked.width"]);
    await send(ann);
    expect(await changed()).toEqual([]);
  });

  it("gives the call's document its newest version, testers without a report none", async () => {
    const mine = await makeCall();
    const [ann] = [await makeTester(mine), await makeTester(mine)];
    expect((await documentOf(mine.call)).testers).toEqual([]);
    await saveFields(ann, swatchTyped());
    await type(ann, { "reading.bust.1.value": "50", "reading.bust.1.way": "flat" });
    await send(ann);
    await type(ann, { "reading.bust.1.value": "51" });
    await send(ann);
    const { testers } = await documentOf(mine.call);
    // A girth laid flat is doubled: 2 × 51.
    expect(testers.map(({ readings }) => readings)).toEqual([[{ measurement: "bust", cm: 102, way: "flat doubled" }]]);
  });

  it("keeps a designer's decision on what stands unchanged in the next version, and drops it with what is changed", async () => {
    const mine = await makeCall();
    const ann = await makeTester(mine);
    const { code: tester } = await database().tester.findUniqueOrThrow({ where: { id: ann.testerId } });
    await type(ann, { "reading.bust.1.value": "50", "reading.length.1.value": "40" });
    await send(ann);
    await decide(mine.call, { tester, part: "readings", position: 0, decision: "set-aside" });
    await decide(mine.call, { tester, part: "readings", position: 1, decision: { use: 41 }, reason: "short" });
    const decided = { position: 1, report: { testerId: ann.testerId } };
    const { decidedAt } = await database().decision.findFirstOrThrow({ where: decided });
    await type(ann, { "reading.bust.1.value": "100" });
    await send(ann);
    // Sending again is nobody's decision.
    const { accountId: decidedById } = mine.designer;
    const carried = { ...decided, report: { ...decided.report, version: 2 } };
    expect(await database().decision.findFirst({ where: carried })).toMatchObject({
      decidedById,
      decidedAt,
      reason: "short",
    });
    const [read] = (await documentOf(mine.call)).testers;
    expect(read?.readings).toEqual([
      { measurement: "bust", cm: 100 },
      { measurement: "length", cm: 40, decision: { use: 41 } },
    ]);
  });

  it("is refused if the draft is not the one that was reviewed", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, swatchTyped());
    const { version } = await readDraft(ann);
    await type(ann, { hours: "12" });
    await expect(sendReport(ann, version)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await reportsOf(ann)).toEqual([]);
  });

  it("of nothing at all is refused in words", async () => {
    const ann = await makeTester(called);
    await expect(send(ann)).rejects.toThrow("Your report is empty");
  });

  it("while the designer closes stores all of it or, told, nothing, and the draft stays", async () => {
    const mine = await makeCall();
    const testers: TesterAccess[] = [];
    for (let at = 0; at < 6; at += 1) testers.push(await makeTester(mine));
    for (const access of testers) await saveFields(access, swatchTyped());
    const closing = database().call.update({ where: { id: mine.call.callId }, data: { status: "closed" } });
    const sent = await Promise.allSettled([...testers.map((access) => sendReport(access, 1)), closing]);
    const stored = await database().report.count({ where: { tester: { callId: mine.call.callId } } });
    expect(sent.slice(0, 6).filter(({ status }) => status === "fulfilled")).toHaveLength(stored);
    const [ann] = testers;
    if (ann === undefined) throw new Error("no tester");
    await expect(sendReport(ann, 1)).rejects.toThrow("This test is closed");
    expect((await readDraft(ann)).typed).toMatchObject({ "swatch.1.stitches": "20" });
  });

  it("is refused for another call's tester, a void link, and one who has stopped", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, swatchTyped());
    const other = await makeCall();
    const gone = { code: "not-found" };
    await expect(sendReport({ ...ann, callId: other.call.callId }, 1)).rejects.toMatchObject(gone);
    await expect(sendReport({ ...ann, linkVersion: 2 }, 1)).rejects.toMatchObject(gone);
    await expect(sendReport({ ...ann, accountId: other.designer.accountId }, 1)).rejects.toMatchObject(gone);
    await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: new Date() } });
    await expect(sendReport(ann, 1)).rejects.toMatchObject({ code: "closed" });
    expect(await reportsOf(ann)).toEqual([]);
  });
});
