import { randomUUID } from "node:crypto";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { placeNotes, textOfTester, unansweredCount } from "@/features/testing/questions/data";
import {
  answerQuestions,
  askQuestion,
  takeBackQuestion,
  takeBackTrouble,
  reportTrouble,
} from "@/features/testing/questions/mutations";
import { askedPlaces } from "@/features/testing/questions/place-notes-data";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { makeViewer } from "./make-account";
import {
  callQuestions,
  callTroubles,
  newCall,
  newestRevision,
  placeAt,
  saidQuery,
  testerOf,
  TEXT,
} from "./questions-call";

let designer: Viewer;
let owner: CallAccess;
let revisionId: string;
let ann: TesterAccess;
let bea: TesterAccess;
/** A tester of another designer's call. */
let zoe: TesterAccess;
let otherOwner: CallAccess;

const sent = (change: object = {}) => ({ revisionId, place: placeAt(1), idempotencyKey: randomUUID(), ...change });

async function asked(tester: TesterAccess, asks: string) {
  await askQuestion(tester, { ...sent(), asks });
  const question = (await callQuestions(owner)).find((one) => one.asks === asks);
  if (question === undefined) throw new Error("not stored");
  return question;
}

beforeAll(async () => {
  designer = await makeViewer();
  const stranger = await makeViewer();
  otherOwner = await newCall(stranger);
  zoe = await testerOf(otherOwner, "ann");
});

beforeEach(async () => {
  owner = await newCall(designer);
  ann = await testerOf(owner, "ann");
  bea = await testerOf(owner, "bea");
  revisionId = await newestRevision(owner.callId);
});

describe("a question at a place of the text", () => {
  it("is kept as written, with its place and its revision", async () => {
    const asks = "למה 98? 🧶\nOr 99?";
    const question = await asked(ann, asks);
    expect(question).toMatchObject({ place: placeAt(1), revisionNumber: 1, asks, answer: null });
    expect(question.tester).toEqual({ name: "ann", size: "small" });
    expect(await textOfTester(ann)).toEqual({ revisionId, text: TEXT });
  });

  it("is stored once, however often a phone sends it, also at the same time", async () => {
    const once = { ...sent(), asks: "Once?" };
    await Promise.all([askQuestion(ann, once), askQuestion(ann, once), askQuestion(ann, once)]);
    await askQuestion(ann, once);
    expect(await callQuestions(owner)).toHaveLength(1);
  });

  it("is refused once the call is closed; one that was stored before stays sent", async () => {
    const before = { ...sent(), asks: "Before" };
    await askQuestion(ann, before);
    await database().call.update({ where: { id: owner.callId }, data: { status: "closed", closedAt: new Date() } });
    await expect(askQuestion(ann, { ...sent(), asks: "After" })).rejects.toMatchObject({ code: "closed" });
    await expect(reportTrouble(ann, { ...sent(), happened: "After", did: "" })).rejects.toMatchObject({
      code: "closed",
    });
    await askQuestion(ann, before);
    expect((await callQuestions(owner)).map(({ asks }) => asks)).toEqual(["Before"]);
  });

  it("is refused of who is this call's tester no more, or never was", async () => {
    const closed = { code: "closed" };
    const guessed = { ...zoe, testerId: ann.testerId };
    await expect(askQuestion(guessed, { ...sent(), asks: "?" })).rejects.toMatchObject(closed);
    await expect(askQuestion({ ...zoe, callId: owner.callId }, { ...sent(), asks: "?" })).rejects.toMatchObject(closed);
    await database().tester.update({ where: { id: ann.testerId }, data: { linkVersion: 2 } });
    await expect(askQuestion(ann, { ...sent(), asks: "?" })).rejects.toMatchObject(closed);
    expect(await callQuestions(owner)).toEqual([]);
  });

  it("is read by the other testers once it is answered, without who asked; until then only by the asker", async () => {
    const question = await asked(ann, "Which side?");
    const read = { questionId: question.questionId, place: placeAt(1), asks: "Which side?" };
    expect((await placeNotes(ann)).questions).toEqual([{ ...read, answer: null, isOwn: true }]);
    expect((await placeNotes(bea)).questions).toEqual([]);
    await answerQuestions(owner, { questionIds: [question.questionId], answer: "The right one.", seenAt: null });
    expect((await placeNotes(bea)).questions).toEqual([{ ...read, answer: "The right one.", isOwn: false }]);
    expect((await placeNotes(zoe)).questions).toEqual([]);
  });

  it("can be deleted by the asker until it is answered", async () => {
    const [first, second] = [await asked(ann, "First"), await asked(ann, "Second")];
    await takeBackQuestion(bea, first.questionId);
    await takeBackQuestion(zoe, first.questionId);
    expect(await callQuestions(owner)).toHaveLength(2);
    await answerQuestions(owner, { questionIds: [second.questionId], answer: "Yes.", seenAt: null });
    await takeBackQuestion(ann, first.questionId);
    await takeBackQuestion(ann, second.questionId);
    expect((await callQuestions(owner)).map(({ asks }) => asks)).toEqual(["Second"]);
  });

  it("outlives its asker's row", async () => {
    const { questionId } = await asked(ann, "Still there?");
    await database().tester.delete({ where: { id: ann.testerId } });
    expect(await callQuestions(owner)).toMatchObject([{ questionId, tester: null }]);
  });
});

describe("an answer", () => {
  it("serves every question that it is given for, and lowers what waits", async () => {
    const questions = [await asked(ann, "One"), await asked(bea, "Two"), await asked(bea, "Three")];
    expect(await unansweredCount(owner)).toBe(3);
    const questionIds = questions.slice(0, 2).map(({ questionId }) => questionId);
    await answerQuestions(owner, { questionIds, answer: "Both.", seenAt: null });
    expect(await unansweredCount(owner)).toBe(1);
    const answers = (await callQuestions(owner)).map(({ answer }) => answer);
    expect(answers).toEqual(["Both.", "Both.", null]);
  });

  it("stands once with all questions that it serves, the earliest first; what waits stands last, apart", async () => {
    const [a, b, d] = [await asked(ann, "a"), await asked(bea, "b"), await asked(bea, "d")];
    await asked(ann, "c");
    const give = (answer: string, ...questions: readonly { readonly questionId: string }[]) =>
      answerQuestions(owner, { questionIds: questions.map(({ questionId }) => questionId), answer, seenAt: null });
    await give("Sooner.", b);
    await give("Later.", a, d);
    const { places } = await askedPlaces(owner, { instructions: TEXT }, saidQuery());
    const threads = places.flatMap((place) => place.threads);
    expect(threads.map(({ answer, shown }) => [answer, shown.map(({ asks }) => asks)])).toEqual([
      ["Sooner.", ["b"]],
      ["Later.", ["a", "d"]],
      [null, ["c"]],
    ]);
  });

  it("is changed over the one that was read, and over no other", async () => {
    const { questionId } = await asked(ann, "When?");
    const give = (answer: string, seenAt: Date | null) =>
      answerQuestions(owner, { questionIds: [questionId], answer, seenAt });
    const read = async () => (await callQuestions(owner))[0];
    await give("Now.", null);
    const late = { code: "changed-meanwhile" };
    await expect(give("Never.", null)).rejects.toMatchObject(late);
    const now = await read();
    await give("Later.", now?.answeredAt ?? null);
    await expect(give("Never.", new Date(0))).rejects.toMatchObject(late);
    expect((await read())?.answer).toBe("Later.");
    expect((await read())?.answeredBy).toBe(designer.name);
  });

  it("is given by one of two who answer at once", async () => {
    const { questionId } = await asked(ann, "Who?");
    const give = (answer: string) => answerQuestions(owner, { questionIds: [questionId], answer, seenAt: null });
    const ends = await Promise.allSettled([give("I."), give("No, I.")]);
    expect(ends.map(({ status }) => status).toSorted()).toEqual(["fulfilled", "rejected"]);
  });

  it("is all or nothing: a question that was taken back meanwhile, or is another call's, stops it", async () => {
    const [one, two] = [await asked(ann, "One"), await asked(bea, "Two")];
    await takeBackQuestion(bea, two.questionId);
    const both = { questionIds: [one.questionId, two.questionId], answer: "Both.", seenAt: null };
    await expect(answerQuestions(owner, both)).rejects.toMatchObject({ code: "changed-meanwhile" });
    const theirs = { questionIds: [one.questionId], answer: "Theirs.", seenAt: null };
    await expect(answerQuestions(otherOwner, theirs)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await unansweredCount(owner)).toBe(1);
  });

  it("is not given by a viewer, whatever proof they forge; they can read it", async () => {
    const { questionId } = await asked(ann, "May I?");
    const helper = await makeViewer();
    const { patternId } = owner.pattern;
    await database().membership.create({ data: { patternId, accountId: helper.accountId, role: "viewer" } });
    const looks = await callAccess(helper, owner.callId, "viewer");
    await expect(callAccess(helper, owner.callId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
    const answer = { questionIds: [questionId], answer: "No.", seenAt: null };
    await expect(answerQuestions(looks, answer)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await callQuestions(looks)).toHaveLength(1);
    expect(await callTroubles(looks)).toEqual([]);
  });

  it("can still be given once the call is closed, to what was asked before", async () => {
    const { questionId } = await asked(ann, "Too late?");
    await database().call.update({ where: { id: owner.callId }, data: { status: "closed", closedAt: new Date() } });
    await answerQuestions(owner, { questionIds: [questionId], answer: "No.", seenAt: null });
    expect(await unansweredCount(owner)).toBe(0);
  });
});

describe("a trouble spot", () => {
  it("is told to the designer alone, once, and taken back by its teller alone", async () => {
    const told = { ...sent({ place: placeAt(2) }), happened: "Four too many", did: "Ripped back" };
    await Promise.all([reportTrouble(ann, told), reportTrouble(ann, told)]);
    const [trouble, ...more] = await callTroubles(owner);
    expect(more).toEqual([]);
    expect(trouble).toMatchObject({
      tester: { name: "ann", size: "small" },
      happened: "Four too many",
      did: "Ripped back",
    });
    expect((await placeNotes(ann)).troubles).toHaveLength(1);
    expect((await placeNotes(bea)).troubles).toEqual([]);
    expect(await callTroubles(otherOwner)).toEqual([]);
    const id = trouble?.id ?? "";
    await takeBackTrouble(bea, id);
    await takeBackTrouble(zoe, id);
    expect(await callTroubles(owner)).toHaveLength(1);
    await takeBackTrouble(ann, id);
    await takeBackTrouble(ann, id);
    expect(await callTroubles(owner)).toEqual([]);
  });
});
