import { randomUUID } from "node:crypto";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { correctionsFor, publishedCorrections } from "@/features/testing/corrections/correction-data";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { markCorrectionRead } from "@/features/testing/news/read-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { makeViewer } from "./make-account";
import { newCall, newestRevision, placeAt, testerOf } from "./questions-call";

let designer: Viewer;
let owner: CallAccess;
let revisionId: string;
let ann: TesterAccess;
let bea: TesterAccess;
/** Another designer's call, and a tester of it. */
let otherOwner: CallAccess;
let zoe: TesterAccess;

const text = "Row 12: work 48 stitches, not 46.";
const sent = (change: Partial<Parameters<typeof publishCorrection>[1]> = {}) => {
  return { text, revisionId, place: null, sizes: [], idempotencyKey: randomUUID(), ...change };
};
const unanswered = (many: number) => [{ standing: "unanswered", many }];
const unreadOf = async (access: TesterAccess, size = "small") =>
  (await correctionsFor(access, { size })).filter(({ isRead }) => !isRead);

beforeAll(async () => {
  designer = await makeViewer();
  otherOwner = await newCall(await makeViewer());
  zoe = await testerOf(otherOwner, "ann");
});

beforeEach(async () => {
  owner = await newCall(designer);
  ann = await testerOf(owner, "ann");
  bea = await testerOf(owner, "bea");
  revisionId = await newestRevision(owner.callId);
});

describe("a correction", () => {
  it("is stored once, however often it is sent, with its place, its revision and who wrote it", async () => {
    const once = sent({ place: placeAt(1) });
    await Promise.all([publishCorrection(owner, once), publishCorrection(owner, once)]);
    await publishCorrection(owner, once);
    expect(await publishedCorrections(owner)).toMatchObject([
      {
        text,
        places: [placeAt(1)],
        numbers: [],
        sizes: [],
        revisionNumber: 1,
        author: designer.name,
        groups: unanswered(2),
      },
    ]);
  });

  it("names every passage and every number that it changes, the old one and the new one", async () => {
    const numbers = [{ count: "width", size: "small", was: 98, becomes: 100 }];
    const morePlaces = [placeAt(2)];
    await publishCorrection(owner, sent({ place: placeAt(1), morePlaces, numbers, sizes: ["small"] }));
    const expected = [{ places: [placeAt(1), placeAt(2)], numbers }];
    expect(await publishedCorrections(owner)).toMatchObject(expected);
    expect(await unreadOf(ann)).toMatchObject(expected);
  });

  it("reaches the testers of the sizes that it concerns, and those of no other call", async () => {
    await publishCorrection(owner, sent({ sizes: ["large"], text: "Large alone" }));
    await publishCorrection(owner, sent({ text: "Everybody" }));
    expect((await unreadOf(ann)).map((each) => each.text)).toEqual(["Everybody"]);
    expect((await unreadOf(ann, "large")).map((each) => each.text)).toEqual(["Everybody", "Large alone"]);
    expect(await unreadOf(zoe)).toEqual([]);
    expect((await publishedCorrections(owner)).map(({ groups }) => groups)).toMatchObject([unanswered(2), []]);
  });

  it("is published by editors alone, whatever proof a helper who only looks, or a stranger, forges", async () => {
    const helper = await makeViewer();
    const { patternId } = owner.pattern;
    await database().membership.create({ data: { patternId, accountId: helper.accountId, role: "viewer" } });
    const looks = await callAccess(helper, owner.callId, "viewer");
    await expect(callAccess(helper, owner.callId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
    await expect(publishCorrection(looks, sent())).rejects.toMatchObject({ code: "not-found" });
    const forged = { ...otherOwner, callId: owner.callId };
    await expect(publishCorrection(forged, sent())).rejects.toMatchObject({ code: "not-found" });
    expect(await publishedCorrections(owner)).toEqual([]);
    await publishCorrection(owner, sent());
    expect(await publishedCorrections(looks)).toHaveLength(1);
    expect(await publishedCorrections(forged)).toEqual([]);
  });

  it("is new to a tester until they, and nobody else, have read it; the designer sees how many have", async () => {
    await publishCorrection(owner, sent());
    const [correction] = await unreadOf(ann);
    const id = correction?.correctionId ?? "";
    await expect(markCorrectionRead(zoe, id)).rejects.toMatchObject({ code: "not-found" });
    await expect(markCorrectionRead({ ...zoe, testerId: ann.testerId }, id)).rejects.toMatchObject({
      code: "not-found",
    });
    expect(await unreadOf(ann)).toHaveLength(1);
    await Promise.all([markCorrectionRead(ann, id), markCorrectionRead(ann, id)]);
    expect(await unreadOf(ann)).toEqual([]);
    expect(await correctionsFor(ann, { size: "small" })).toHaveLength(1);
    expect(await unreadOf(bea)).toHaveLength(1);
    expect(await publishedCorrections(owner)).toMatchObject([{ groups: unanswered(2) }]);
    await database().call.update({ where: { id: owner.callId }, data: { status: "closed", closedAt: new Date() } });
    expect((await publishedCorrections(owner))[0]?.groups).toMatchObject([
      { standing: "told", many: 1, names: ["bea"] },
      { standing: "read", many: 1, names: ["ann"] },
    ]);
    await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: new Date() } });
    expect((await publishedCorrections(owner))[0]?.groups).toMatchObject([{ standing: "told", many: 1 }]);
  });

  it("can be read and published once the call is closed, and no more with a link that was renewed", async () => {
    await database().call.update({ where: { id: owner.callId }, data: { status: "closed", closedAt: new Date() } });
    await publishCorrection(owner, sent());
    const [correction] = await unreadOf(ann);
    await markCorrectionRead(ann, correction?.correctionId ?? "");
    expect(await unreadOf(ann)).toEqual([]);
    await database().tester.update({ where: { id: bea.testerId }, data: { linkVersion: 2 } });
    expect(await unreadOf(bea)).toEqual([]);
  });

  it("outlives its author's account and the testers who read it; their marks go with their data", async () => {
    const author = await makeViewer();
    const { patternId } = owner.pattern;
    await database().membership.create({ data: { patternId, accountId: author.accountId, role: "editor" } });
    await publishCorrection(await callAccess(author, owner.callId, "editor"), sent());
    const [correction] = await unreadOf(ann);
    await markCorrectionRead(ann, correction?.correctionId ?? "");
    await forgetTester(ann);
    expect(await database().correctionRead.count({ where: { testerId: ann.testerId } })).toBe(0);
    await database().account.delete({ where: { id: author.accountId } });
    expect(await publishedCorrections(owner)).toMatchObject([{ text, author: null }]);
    await database().pattern.delete({ where: { id: patternId } });
    expect(await database().correction.count({ where: { callId: owner.callId } })).toBe(0);
  });
});
