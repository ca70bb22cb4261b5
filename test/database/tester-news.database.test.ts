import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import type { PatternDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { patternAccess } from "@/features/patterns/access";
import { saveRevision } from "@/features/patterns/mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { moveToRevision } from "@/features/testing/news/move-mutations";
import { newAnswers, newerRevision } from "@/features/testing/news/news-data";
import { markAnswersRead, markRevisionRead } from "@/features/testing/news/read-mutations";
import { answerQuestions, askQuestion } from "@/features/testing/questions/mutations";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { database } from "@/server/database";
import { typedSwatch } from "../engine/reporting/report-context";
import { patternDocument } from "../factories/pattern";
import { makeCall, makeTester, type TestedCall } from "./make-tester";
import { placeAt } from "./questions-call";

let made: TestedCall;
let call: CallAccess;
let ann: TesterAccess;

async function ask(tester: TesterAccess, asks: string): Promise<string> {
  const idempotencyKey = randomUUID();
  await askQuestion(tester, { asks, revisionId: made.revisionId, place: placeAt(1), idempotencyKey });
  return (await database().question.findUniqueOrThrow({ where: { idempotencyKey } })).id;
}

function give(questionId: string, answer: string, seenAt: Date | null = null): Promise<void> {
  return answerQuestions(call, { questionIds: [questionId], answer, seenAt });
}

/** Saves a revision of the pattern. @returns its id. */
async function revise(change: Partial<PatternDocument>, baseNumber = 1): Promise<string> {
  const access = await patternAccess(made.designer, call.pattern.patternId, "editor");
  await saveRevision(access, { document: patternDocument(change), reason: "Why", baseNumber });
  const newest = { patternId_number: { patternId: access.patternId, number: baseNumber + 1 } };
  return (await database().revision.findUniqueOrThrow({ where: newest })).id;
}

function type(tester: TesterAccess, typed: Readonly<Record<string, string>>) {
  const changes = Object.entries(typed).map(([field, becomes]) => ({ field, was: "", becomes }));
  return saveFields(tester, changes);
}

beforeEach(async () => {
  made = await makeCall();
  ({ call } = made);
  ann = await makeTester(made);
});

describe("new answers", () => {
  it("are those to a tester's own questions, and to others of the same size since they accepted", async () => {
    const [bea, large] = [await makeTester(made), await makeTester(made, { size: "large" })];
    const [own, beas, larges] = [await ask(ann, "Own"), await ask(bea, "Bea's"), await ask(large, "Large's")];
    await ask(ann, "Still waiting");
    for (const id of [own, beas, larges]) await give(id, "Yes.");
    const seen = (await newAnswers(ann)).map(({ asks, isOwn }) => [asks, isOwn]);
    expect(seen.toSorted()).toEqual([
      ["Bea's", false],
      ["Own", true],
    ]);
    const late = await makeTester(made);
    expect(await newAnswers(late)).toEqual([]);
    const stranger = await makeTester(await makeCall());
    expect(await newAnswers(stranger)).toEqual([]);
  });

  it("stay until they are read, and one that is changed afterwards is new again", async () => {
    const id = await ask(ann, "When?");
    await give(id, "Now.");
    const [first] = await newAnswers(ann);
    if (first === undefined) throw new Error("not announced");
    const stranger = await makeTester(await makeCall());
    await markAnswersRead(stranger, [first]);
    await markAnswersRead({ ...stranger, testerId: ann.testerId }, [first]);
    expect(await newAnswers(ann)).toHaveLength(1);
    await Promise.all([markAnswersRead(ann, [first]), markAnswersRead(ann, [first])]);
    expect(await newAnswers(ann)).toEqual([]);
    await give(id, "Later.", first.answeredAt);
    // What was on the page was the earlier answer.
    await markAnswersRead(ann, [first]);
    expect(await newAnswers(ann)).toMatchObject([{ answer: "Later." }]);
  });
});

describe("a newer revision", () => {
  it("is told to the pattern's testers until they have read about it; the next one is new again", async () => {
    expect(await newerRevision(ann, 1)).toBeNull();
    await revise({ name: "Second" });
    expect(await newerRevision(ann, 1)).toMatchObject({ number: 2, isRead: false });
    await markRevisionRead(ann, 99);
    await markRevisionRead(await makeTester(await makeCall()), 2);
    expect(await newerRevision(ann, 1)).toMatchObject({ number: 2, isRead: false });
    await markRevisionRead(ann, 2);
    expect(await newerRevision(ann, 1)).toMatchObject({ number: 2, isRead: true });
    await revise({ name: "Third" }, 2);
    await markRevisionRead(ann, 2);
    expect(await newerRevision(ann, 1)).toMatchObject({ number: 3, isRead: false });
    expect(await newerRevision({ ...ann, linkVersion: 2 }, 1)).toBeNull();
  });
});

describe("moving to a newer revision", () => {
  const grading = { width: { small: 96, large: 118 }, height: { small: 104, large: 110 } };

  it("keeps what was typed, lets blank counts follow, and asks again whether the pattern was followed", async () => {
    await type(ann, { ...typedSwatch(), "worked.width": "98", asWritten: "yes" });
    const to = await revise({ grading });
    await moveToRevision(ann, { from: made.revisionId, to });
    const inHand = await readDraft(ann);
    expect(inHand.revisionId).toBe(to);
    // 98 was the old pattern's number too; it was typed, so it stays.
    expect(inHand.typed).toEqual({ ...typedSwatch(), "worked.width": "98" });
    await sendReport(ann, inHand.version);
    const report = (await readDraft(ann)).sent?.report;
    expect(report).toMatchObject({ worked: { width: 98, height: 104 }, workedTold: false });
    await moveToRevision(ann, { from: made.revisionId, to });
  });

  it("leaves the word that the pattern was followed where no number of the size differs", async () => {
    await type(ann, { asWritten: "yes" });
    const to = await revise({
      grading: { ...grading, width: { small: 98, large: 120 }, height: { small: 100, large: 111 } },
    });
    await moveToRevision(ann, { from: made.revisionId, to });
    expect((await readDraft(ann)).typed).toEqual({ asWritten: "yes" });
  });

  it("is open to who sent a swatch alone, and to nobody who sent more", async () => {
    await type(ann, typedSwatch());
    await sendReport(ann, 1);
    const bea = await makeTester(made);
    await type(bea, { ...typedSwatch(), hours: "12" });
    await sendReport(bea, 1);
    const to = await revise({ grading });
    await moveToRevision(ann, { from: made.revisionId, to });
    await expect(moveToRevision(bea, { from: made.revisionId, to })).rejects.toMatchObject({ code: "closed" });
    expect((await readDraft(ann)).revisionId).toBe(to);
    expect((await readDraft(bea)).revisionId).toBe(made.revisionId);
  });

  it("leads to a newer revision of the tester's own pattern that has their size, and nowhere else", async () => {
    const other = await makeCall();
    const move = (access: TesterAccess, to: string, from = made.revisionId) => moveToRevision(access, { from, to });
    await expect(move(ann, other.revisionId)).rejects.toMatchObject({ code: "not-found" });
    await expect(move(ann, randomUUID())).rejects.toMatchObject({ code: "not-found" });
    const to = await revise({ grading });
    await expect(move(ann, to, other.revisionId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    const stranger = await makeTester(other);
    await expect(move(stranger, to, other.revisionId)).rejects.toMatchObject({ code: "not-found" });
    await expect(move({ ...stranger, testerId: ann.testerId }, to)).rejects.toMatchObject({ code: "not-found" });
    await expect(move({ ...ann, linkVersion: 2 }, to)).rejects.toMatchObject({ code: "not-found" });
    await move(ann, to);
    await expect(move(ann, made.revisionId, to)).rejects.toMatchObject({ code: "not-found" });
    const small = { id: "small", label: "S", body: { bust: 90 } };
    const lacking = await revise({ sizes: [{ ...small, id: "tiny" }], grading: {} }, 2);
    await expect(move(ann, lacking, to)).rejects.toMatchObject({ code: "not-found" });
  });

  it("is refused once the call is closed or the tester has stopped", async () => {
    const to = await revise({ grading });
    const bea = await makeTester(made);
    await database().tester.update({ where: { id: bea.testerId }, data: { stoppedAt: new Date() } });
    await expect(moveToRevision(bea, { from: made.revisionId, to })).rejects.toMatchObject({ code: "closed" });
    await database().call.update({ where: { id: call.callId }, data: { status: "closed", closedAt: new Date() } });
    await expect(moveToRevision(ann, { from: made.revisionId, to })).rejects.toMatchObject({ code: "closed" });
  });
});
