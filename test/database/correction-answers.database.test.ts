import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { gaps } from "@/engine/gaps";
import { ownValue } from "@/engine/pattern";
import { fieldOf, type CorrectionAnswer } from "@/engine/reporting";
import { callDocument as storedDocument } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { saveRevision } from "@/features/patterns/mutations";
import { answerCorrection, confirmWorked } from "@/features/testing/corrections/answer-mutations";
import { correctionsFor, publishedCorrections } from "@/features/testing/corrections/correction-data";
import { unansweredTesters } from "@/features/testing/corrections/correction-standings-data";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { moveToRevision } from "@/features/testing/news/move-mutations";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { database } from "@/server/database";
import { typedSwatch } from "../engine/reporting/report-context";
import { patternDocument } from "../factories/pattern";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

let made: TestedCall;
let ann: TesterAccess;
let bea: TesterAccess;
let correctionId: string;

/** 6 stitches at 20 to 10 cm are 3 cm, twice in the girth: bust is 100 cm with 98, and 106 with 104. */
const NUMBER = { count: "width", size: "small", was: 98, becomes: 104 };

async function publish(change: Partial<typeof NUMBER> = {}, sizes = ["small"]): Promise<string> {
  const idempotencyKey = randomUUID();
  const numbers = [{ ...NUMBER, ...change }];
  const { revisionId } = made;
  const text = "Six stitches too few.";
  await publishCorrection(made.call, { text, revisionId, place: null, numbers, sizes, idempotencyKey });
  return (await database().correction.findUniqueOrThrow({ where: { idempotencyKey } })).id;
}

const say = (access: TesterAccess, answer: CorrectionAnswer, id = correctionId) =>
  answerCorrection(access, { correctionId: id, answer });

const confirm = (access: TesterAccess, width: number, id = correctionId) =>
  confirmWorked(access, { correctionId: id, worked: { width } });

/** Sends a swatch on gauge and these readings. */
async function send(access: TesterAccess, readings: Readonly<Record<string, string>>): Promise<void> {
  const typed = Object.entries(readings).flatMap(([id, cm]) => [
    [fieldOf.reading(id, "1", "value"), cm],
    [fieldOf.reading(id, "1", "way"), "around"],
    [fieldOf.reading(id, "1", "state"), "washed"],
  ]);
  const { typed: stored } = await readDraft(access);
  const changes = Object.entries({ ...typedSwatch(), ...Object.fromEntries(typed) });
  await saveFields(
    access,
    changes.map(([field, becomes]) => ({ field, was: stored[field] ?? "", becomes: String(becomes) })),
  );
  await sendReport(access, (await readDraft(access)).version);
}

const gradedWidth = async (access: TesterAccess) =>
  ownValue((await readDraft(access)).context.pattern.grading, "width")?.["small"];

const version = async () =>
  (await database().call.findUniqueOrThrow({ where: { id: made.call.callId }, select: { version: true } })).version;

/** The width that the analysis reads for a tester, and the gap of their bust, cm. */
async function readAs(access: TesterAccess) {
  const { code } = await database().tester.findUniqueOrThrow({ where: { id: access.testerId } });
  const document = await storedDocument(made.call);
  const tester = document.testers.find(({ id }) => id === code);
  const step = gaps(document).steps.find((one) => one.tester === code && one.measurement === "bust");
  return { width: ownValue(tester?.worked, "width"), confirmed: tester?.confirmedCounts, gapCm: step?.gapCm ?? NaN };
}

beforeEach(async () => {
  made = await makeCall();
  ann = await makeTester(made);
  bea = await makeTester(made);
  correctionId = await publish();
});

describe("an analysis", () => {
  it("reads the corrected count of who changed it and the old one of who keeps it, each as made", async () => {
    await say(ann, "changed");
    await say(bea, "kept");
    await confirm(bea, 98);
    await send(ann, { bust: "106" });
    await send(bea, { bust: "100" });
    const [changed, kept] = [await readAs(ann), await readAs(bea)];
    expect(changed).toMatchObject({ width: 104, confirmed: ["width"] });
    expect(kept).toMatchObject({ width: 98, confirmed: ["width"] });
    for (const { gapCm } of [changed, kept]) expect(gapCm).toBeCloseTo(0, 6);
  });

  it("reads the revision's number of who has not answered, does not have the error, or has not confirmed", async () => {
    const carl = await makeTester(made);
    await say(bea, "absent");
    await say(carl, "kept");
    for (const access of [ann, bea, carl]) await send(access, { bust: "100" });
    expect([await readAs(ann), await readAs(bea), await readAs(carl)].map(({ width }) => width)).toEqual([98, 98, 98]);
    expect([(await readAs(ann)).confirmed, (await readAs(bea)).confirmed]).toEqual([undefined, ["width"]]);
  });

  it("reads an answer into a report that was sent before it, but no other number that was typed there", async () => {
    await send(ann, { bust: "106" });
    await saveFields(bea, [{ field: "worked.width", was: "", becomes: "97" }]);
    await send(bea, { bust: "99" });
    expect(await readAs(ann)).toMatchObject({ width: 98, gapCm: 6 });
    const before = await version();
    await say(ann, "changed");
    await say(ann, "changed");
    await say(bea, "following");
    expect(await version()).toBe(before + 2);
    expect((await readAs(ann)).width).toBe(104);
    expect((await readAs(ann)).gapCm).toBeCloseTo(0, 6);
    expect((await readAs(bea)).width).toBe(97);
    await say(ann, "kept");
    await confirm(ann, 98);
    expect((await readAs(ann)).width).toBe(98);
  });

  it("adds a known error of the instructions only to those who answered nothing", async () => {
    const carl = await makeTester(made);
    await say(ann, "changed");
    await say(bea, "kept");
    await confirm(bea, 98);
    for (const access of [ann, bea, carl]) await send(access, { bust: "100" });
    const access = await patternAccess(made.designer, made.call.pattern.patternId, "editor");
    await saveRevision(access, { document: patternDocument(), reason: "Why", baseNumber: 1 });
    const { id: revisionId } = await database().revision.findFirstOrThrow({
      where: { patternId: access.patternId, number: 2 },
    });
    const instructionErrors = [{ count: "width", size: "small", amount: 6 }];
    const evidence = { take: [], engineVersion: "x", analysis: "", plan: "", instructionErrors };
    await database().revisionEvidence.create({ data: { revisionId, callId: made.call.callId, ...evidence } });
    expect([await readAs(ann), await readAs(bea), await readAs(carl)].map(({ width }) => width)).toEqual([
      104, 98, 104,
    ]);
  });
});

describe("an answer", () => {
  it("is what the tester's own counts start from, and a confirmed number stands there as if typed", async () => {
    expect((await readDraft(ann)).context.pattern.grading?.["width"]).toEqual({ small: 98, large: 118 });
    await say(ann, "following");
    expect((await readDraft(ann)).context.pattern.grading?.["width"]).toEqual({ small: 104, large: 118 });
    await say(ann, "kept");
    expect((await readDraft(ann)).context.pattern.grading?.["width"]).toEqual({ small: 98, large: 118 });
    await confirm(ann, 98);
    expect((await readDraft(ann)).typed).toEqual({ "worked.width": "98" });
    await say(ann, "following");
    expect((await readDraft(ann)).typed).toEqual({});
    expect(await correctionsFor(ann, { size: "small" })).toMatchObject([{ answer: "following", worked: null }]);
  });

  it("to the last of several corrections counts, and who kept the number before starts from theirs", async () => {
    await say(ann, "following");
    await say(bea, "kept");
    await confirm(bea, 97);
    const second = await publish({ was: 104, becomes: 106 });
    const before = async (access: TesterAccess) => (await correctionsFor(access, { size: "small" }))[0]?.before;
    expect([await before(ann), await before(bea)]).toEqual([{ width: 104 }, { width: 97 }]);
    await say(ann, "changed", second);
    expect(await gradedWidth(ann)).toBe(106);
  });

  it("goes with a tester who moves to a revision that has taken the correction in", async () => {
    await say(bea, "kept");
    await confirm(bea, 98);
    const access = await patternAccess(made.designer, made.call.pattern.patternId, "editor");
    const grading = { ...patternDocument().grading, width: { small: 104, large: 118 } };
    await saveRevision(access, { document: patternDocument({ grading }), reason: "Why", baseNumber: 1 });
    const { id } = await database().revision.findFirstOrThrow({ where: { patternId: access.patternId, number: 2 } });
    await moveToRevision(bea, { from: made.revisionId, to: id });
    expect(await gradedWidth(bea)).toBe(98);
    expect((await readDraft(bea)).typed).toEqual({ "worked.width": "98" });
  });

  it("is given by the tester alone, and about a correction of their size in their call", async () => {
    const large = await makeTester(made, { size: "large" });
    const zoe = await makeTester(await makeCall());
    await expect(say(large, "following")).rejects.toMatchObject({ code: "not-found" });
    await expect(say(zoe, "following")).rejects.toMatchObject({ code: "not-found" });
    await expect(say({ ...zoe, testerId: ann.testerId }, "following")).rejects.toMatchObject({ code: "not-found" });
    await expect(confirm(ann, 98)).rejects.toMatchObject({ code: "not-found" });
    await say(ann, "kept");
    const other = confirmWorked(ann, { correctionId, worked: { height: 100 } });
    await expect(other).rejects.toMatchObject({ code: "not-found" });
    expect(await database().correctionAnswer.count({ where: { correctionId } })).toBe(1);
  });

  it("can be changed until all of the report is sent; who has finished is told and not asked", async () => {
    await say(ann, "following");
    await send(ann, { bust: "106", length: "40" });
    await send(bea, { bust: "100", length: "40" });
    for (const access of [ann, bea]) await expect(say(access, "kept")).rejects.toMatchObject({ code: "closed" });
    await makeTester(made);
    expect(await publishedCorrections(made.call)).toMatchObject([
      {
        groups: [
          { standing: "unanswered", many: 1 },
          { standing: "following", many: 1 },
          { standing: "told", many: 1 },
        ],
      },
    ]);
    expect(await unansweredTesters(made.call)).toBe(1);
    await database().call.update({ where: { id: made.call.callId }, data: { status: "closed", closedAt: new Date() } });
    expect(await unansweredTesters(made.call)).toBe(0);
  });

  it("goes with a tester's data, while the number that they worked stays in their report", async () => {
    await send(ann, { bust: "106" });
    await say(ann, "changed");
    const before = await readAs(ann);
    await forgetTester(ann);
    expect(await database().correctionAnswer.count({ where: { testerId: ann.testerId } })).toBe(0);
    expect(await readAs(ann)).toEqual(before);
    expect(before).toMatchObject({ width: 104, confirmed: ["width"] });
  });
});
