import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import type { CallAccess } from "@/features/calls/access";
import { askableTesters, askedMeasurements, questionsAboutNumbers } from "@/features/testing/asked/asked-data";
import {
  answerAboutNumber,
  askAboutNumber,
  markAnswerSeen,
  withdrawQuestion,
} from "@/features/testing/asked/asked-mutations";
import type { AskedNumber } from "@/features/testing/asked/asked-schema";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { database } from "@/server/database";
import { typedSwatch } from "../engine/reporting/report-context";
import { makeAccount } from "./make-account";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

let made: TestedCall;
let call: CallAccess;
let ann: TesterAccess;

const BUST = "reading.bust.2kq.value";
const bust: AskedNumber = { part: "readings", position: 0 };
const gone = { code: "not-found" };

async function type(tester: TesterAccess, typed: Readonly<Record<string, string>>): Promise<void> {
  const { typed: stored } = await readDraft(tester);
  await saveFields(
    tester,
    Object.entries(typed).map(([field, becomes]) => ({ field, was: stored[field] ?? "", becomes })),
  );
}

async function send(tester: TesterAccess): Promise<void> {
  await sendReport(tester, (await readDraft(tester)).version);
}

async function ask(number: AskedNumber = bust, given: { access?: CallAccess; testerId?: string } = {}): Promise<void> {
  const { access = call, testerId = ann.testerId } = given;
  await askAboutNumber(access, { testerId, number, asks: "Was it flat?", idempotencyKey: randomUUID() });
}

async function waiting(): Promise<string> {
  const [question] = (await readDraft(ann)).asked;
  if (question === undefined) throw new Error("nothing is asked");
  return question.questionId;
}

beforeEach(async () => {
  made = await makeCall();
  ({ call } = made);
  ann = await makeTester(made);
  // As another device of the tester named the reading.
  await type(ann, { ...typedSwatch(), [BUST]: "50", "worked.width": "98" });
  await send(ann);
});

describe("a question about a number of a report", () => {
  it("arrives at the tester's own field, and is stored once", async () => {
    const key = randomUUID();
    const question = { testerId: ann.testerId, number: bust, asks: "Was it flat?", idempotencyKey: key };
    await askAboutNumber(call, question);
    await askAboutNumber(call, question);
    const { asked } = await readDraft(ann);
    expect(asked).toMatchObject([{ field: BUST, about: "50", asks: "Was it flat?", answeredAt: null }]);
    await expect(ask()).rejects.toMatchObject({ code: "not-allowed" });
    await ask({ count: "width" });
    await ask({ part: "swatches", position: 0 });
    expect((await readDraft(ann)).asked.map(({ field }) => field)).toEqual([
      BUST,
      "worked.width",
      expect.stringMatching(/^swatch\.\w+\.stitches$/),
    ]);
  });

  it("about a measurement arrives at its newest reading, or where it is to be entered", async () => {
    await ask({ measurement: "bust" });
    await ask({ measurement: "length" });
    const { asked } = await readDraft(ann);
    expect(asked.map(({ field, about }) => [field, about])).toEqual([
      [BUST, "50"],
      ["reading.length.1.value", ""],
    ]);
    expect(await askedMeasurements(call)).toMatchObject([
      { testerId: ann.testerId, measurement: "bust" },
      { testerId: ann.testerId, measurement: "length" },
    ]);
    await expect(ask({ measurement: "bust" })).rejects.toMatchObject({ code: "not-allowed" });
    await expect(ask({ measurement: "nose" })).rejects.toMatchObject(gone);
    await answerAboutNumber(ann, { questionId: await waiting(), answer: "" });
    expect(await askedMeasurements(call)).toMatchObject([{ measurement: "length" }]);
  });

  it("is for testers who have reported and go on, and for the call's own people alone", async () => {
    const others = await makeCall();
    const stopped = await makeTester(made);
    const ids = [ann.testerId, stopped.testerId];
    expect([...(await askableTesters(call, ids))]).toEqual([ann.testerId]);
    await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: new Date() } });
    expect([...(await askableTesters(call, ids))]).toEqual([]);
    await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: null } });
    const forged = { ...others.call, callId: call.callId };
    await ask({ measurement: "bust" });
    for (const access of [others.call, forged]) {
      expect([...(await askableTesters(access, ids))]).toEqual([]);
      expect(await askedMeasurements(access)).toEqual([]);
      await expect(ask({ measurement: "length" }, { access })).rejects.toThrow();
    }
  });

  it("is withdrawn while it is unanswered, and then is nowhere", async () => {
    await ask();
    const questionId = await waiting();
    const others = await makeCall();
    await expect(withdrawQuestion(others.call, questionId)).rejects.toThrow();
    await withdrawQuestion(call, questionId);
    expect((await readDraft(ann)).asked).toEqual([]);
    expect(await questionsAboutNumbers(call, ann.testerId)).toEqual([]);
    await expect(answerAboutNumber(ann, { questionId, answer: "" })).rejects.toMatchObject({
      message: "This question was answered or withdrawn in the meantime. Reload the page.",
    });
    await ask();
    const again = await waiting();
    await answerAboutNumber(ann, { questionId: again, answer: "Yes" });
    await expect(withdrawQuestion(call, again)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect((await readDraft(ann)).asked).toMatchObject([{ answer: "Yes" }]);
  });

  it("is answered in words, until the designer has read it", async () => {
    await ask();
    const questionId = await waiting();
    await answerAboutNumber(ann, { questionId, answer: "I measured twice" });
    await expect(answerAboutNumber(ann, { questionId, answer: "" })).rejects.toMatchObject(gone);
    expect(await questionsAboutNumbers(call, ann.testerId)).toMatchObject([
      { answer: "I measured twice", changedTo: null, isSeen: false },
    ]);
    expect((await readDraft(ann)).asked).toMatchObject([{ answer: "I measured twice" }]);
    await markAnswerSeen(call, questionId);
    expect(await questionsAboutNumbers(call, ann.testerId)).toMatchObject([{ isSeen: true }]);
    expect((await readDraft(ann)).asked).toEqual([]);
  });

  it("is answered by sending another number, and not by typing it or by sending others", async () => {
    await ask();
    await type(ann, { "worked.width": "96" });
    await send(ann);
    await type(ann, { [BUST]: "100" });
    expect(await questionsAboutNumbers(call, ann.testerId)).toMatchObject([{ answeredAt: null }]);
    await send(ann);
    expect(await questionsAboutNumbers(call, ann.testerId)).toMatchObject([
      { about: "50", answer: null, changedTo: "100", answeredAt: expect.any(Date) },
    ]);
    // It may be asked about again.
    await ask();
    expect((await readDraft(ann)).asked).toMatchObject([{ changedTo: "100" }, { about: "100", answeredAt: null }]);
  });

  it("is answered by measuring again and sending both", async () => {
    await ask();
    await type(ann, { "reading.bust.3kq.value": "51" });
    await send(ann);
    expect(await questionsAboutNumbers(call, ann.testerId)).toMatchObject([
      { about: "50", answer: null, changedTo: "50 and 51", answeredAt: expect.any(Date) },
    ]);
  });

  it("is refused of what no report has, of those without pages, and once the call is closed or they stopped", async () => {
    await expect(ask({ part: "readings", position: 1 })).rejects.toMatchObject(gone);
    await expect(ask({ count: "nowhere" })).rejects.toMatchObject(gone);
    const bea = await makeTester(made);
    await expect(ask(bust, { testerId: bea.testerId })).rejects.toMatchObject(gone);
    await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: new Date() } });
    await expect(ask()).rejects.toMatchObject(gone);
    await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: null } });
    await database().call.update({ where: { id: call.callId }, data: { status: "closed" } });
    await expect(ask()).rejects.toMatchObject({ code: "closed" });
  });

  it("is asked, answered and read by nobody else", async () => {
    const other = await makeCall();
    await expect(ask(bust, { access: other.call })).rejects.toMatchObject(gone);
    const { id: accountId } = await makeAccount();
    const viewer = { ...call, pattern: { ...call.pattern, accountId } };
    const membership = { patternId: call.pattern.patternId, accountId };
    await database().membership.create({ data: { ...membership, role: "viewer" } });
    await expect(ask(bust, { access: viewer })).rejects.toMatchObject({ code: "closed" });
    await ask();
    const questionId = await waiting();
    const bea = await makeTester(made);
    await expect(answerAboutNumber(bea, { questionId, answer: "" })).rejects.toMatchObject(gone);
    await answerAboutNumber(ann, { questionId, answer: "" });
    await expect(markAnswerSeen(other.call, questionId)).rejects.toMatchObject(gone);
    await expect(markAnswerSeen(viewer, questionId)).rejects.toMatchObject(gone);
    expect(await questionsAboutNumbers(other.call, ann.testerId)).toEqual([]);
    expect(await questionsAboutNumbers(viewer, ann.testerId)).toHaveLength(1);
  });

  it("goes when the tester deletes their data", async () => {
    await ask();
    await forgetTester(ann);
    expect(await database().numberQuestion.count({ where: { testerId: ann.testerId } })).toBe(0);
  });
});
