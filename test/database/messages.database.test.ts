import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { contentSchema } from "@/features/mail/schema";
import { applicationAccess, applicationLink } from "@/features/recruiting/applications/access";
import { storeApplication, storeDecision, type NewApplication } from "@/features/recruiting/applications/mutations";
import { inviteApplicants } from "@/features/recruiting/invitations/mutations";
import { countUntold } from "../../src/features/recruiting/places/no-spot-data";
import { tellWithoutSpot } from "../../src/features/recruiting/places/no-spot-mutations";
import { publishedCall } from "@/features/recruiting/listing/access";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { stopTest } from "@/features/testing/home/milestone-mutations";
import { storedDataOfTester } from "@/features/testing/home/stored-data";
import { answerQuestions, askQuestion } from "@/features/testing/questions/mutations";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { readDraft } from "@/features/testing/report/data";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { withdrawApplication } from "../../src/features/recruiting/applications/own/own-mutations";
import { acceptInvited, declineInvited } from "../../src/features/testing/invited/invited-mutations";
import { endTest } from "../../src/features/testing/progress/person-mutations";
import { inviteLonger, withdrawInvited } from "../../src/features/testing/progress/progress-mutations";
import { freeSpots } from "../../src/features/testing/progress/spot-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { typedSwatch } from "../engine/reporting/report-context";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall, rowOf, WEEK } from "./invited-tester";
import { makePublishedCall } from "./published-call";

// Before the settings are first read; nothing is sent here.
process.env.SMTP_URL = "smtp://127.0.0.1:9";
process.env.MAIL_FROM = "mail@sizes.example";

let designer: Viewer;
let access: CallAccess;

/** What was written, in order: kind, recipient and all words. */
async function written() {
  const rows = await database().message.findMany({ orderBy: [{ createdAt: "asc" }, { kind: "asc" }] });
  return rows.map(({ kind, address, content }) => ({
    kind,
    address,
    says: JSON.stringify(contentSchema.parse(content)),
  }));
}

const kinds = async () => (await written()).map(({ kind, address }) => `${kind} to ${address.split("@")[0]}`);

/** Somebody who has accepted, with no mail so far. */
async function accepted(): Promise<TesterAccess> {
  const testerId = await inviteTo(access);
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  await database().message.deleteMany();
  return { testerId, callId: access.callId, accountId: null, linkVersion: 1 } as TesterAccess;
}

beforeEach(async () => {
  designer = await makeViewer("Ana");
  access = await makeCall(designer);
  await database().account.update({
    where: { id: designer.accountId },
    data: { email: `ana@${randomUUID()}.example` },
  });
  await database().message.deleteMany();
});

const APPLICATION: NewApplication = {
  ...{ name: "Maja", email: "maja@example.org", measurements: { bust: 97.79 }, typed: {}, accountId: null },
  document: {
    ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us" },
    ...{ timeZone: "Pacific/Chatham", experience: "first", handle: "", pastWork: "" },
  },
  ...{ agreementVersion: 1, idempotencyKey: randomUUID() },
};

describe("an applicant", () => {
  it("gets one message with the way back, however often the form is sent, then their offer with its days", async () => {
    const made = await makePublishedCall();
    const call = await publishedCall(made.callId);
    const applicationId = await storeApplication(call, APPLICATION);
    await storeApplication(call, APPLICATION);
    await expect(storeApplication(call, { ...APPLICATION, idempotencyKey: randomUUID() })).rejects.toThrow();
    const [received, ...others] = await written();
    expect(others).toEqual([]);
    expect(received).toMatchObject({ kind: "application-received", address: "maja@example.org" });
    expect(received?.says).toContain(`"before":"/applications/","key":"application","id":"${applicationId}"`);
    // No body measurement goes out.
    expect(received?.says).not.toContain("97.79");
    const expiresAt = new Date(Date.now() + WEEK);
    await inviteApplicants(made.access, { invitations: [{ applicationId, size: "small" }], expiresAt });
    await inviteApplicants(made.access, { invitations: [{ applicationId, size: "small" }], expiresAt });
    expect(await kinds()).toEqual(["application-received to maja", "place-offered to maja"]);
    expect((await written())[1]?.says).toMatch(/Swatch due.*Chatham/);
    await withdrawApplication(await applicationAccess(applicationLink(applicationId)));
    expect((await kinds())[2]).toMatch(/^place-declined to /);
    await database().application.delete({ where: { id: applicationId } });
    expect(await database().message.count({ where: { address: "maja@example.org" } })).toBe(0);
  });
});

describe("applicants without a spot", () => {
  it("are told once, each by how it stands, and only once nobody can apply any more", async () => {
    const made = await makePublishedCall();
    const call = await publishedCall(made.callId);
    const apply = (name: string) =>
      storeApplication(call, { ...APPLICATION, name, email: `${name}@example.org`, idempotencyKey: randomUUID() });
    const [no, , invited] = [await apply("no"), await apply("waits"), await apply("invited")];
    await storeDecision(made.access, { applicationId: no, decision: "no" });
    const expiresAt = new Date(Date.now() + WEEK);
    await inviteApplicants(made.access, { invitations: [{ applicationId: invited, size: "small" }], expiresAt });
    await database().message.deleteMany();
    expect(await tellWithoutSpot(made.access)).toBe(0);
    await database().listing.update({ where: { callId: made.callId }, data: { applyUntil: new Date() } });
    expect(await countUntold(made.access, new Date())).toBe(2);
    const told = await Promise.all([tellWithoutSpot(made.access), tellWithoutSpot(made.access)]);
    expect(told.toSorted()).toEqual([0, 2]);
    const subjects = (await written()).map(({ address, says }) => [address, /"subject":"(.*?) “/.exec(says)?.[1]]);
    expect(subjects.toSorted()).toEqual([
      ["no@example.org", "No spot this time in"],
      ["waits@example.org", "All spots in"],
    ]);
  });
});

describe("somebody who is invited", () => {
  it("gets the offer, a later deadline, and what follows their yes", async () => {
    const testerId = await inviteTo(access);
    await inviteLonger(access, testerId, new Date(Date.now() + 2 * WEEK));
    await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
    await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
    expect(await kinds()).toEqual(["place-offered to bea", "place-offered to bea", "place-accepted to bea"]);
    expect((await written())[0]?.says).toContain(`"before":"/invited/","key":"invitation","id":"${testerId}"`);
  });

  it("is told that the offer is withdrawn; their no goes to the designer at once", async () => {
    const [withdrawn, declined] = [await inviteTo(access), await inviteTo(access)];
    await withdrawInvited(access, withdrawn);
    await expect(withdrawInvited(access, withdrawn)).rejects.toThrow();
    await declineInvited(await held(declined), null);
    await declineInvited(await held(declined), null);
    expect((await kinds()).slice(2)).toEqual(["place-released to bea", "place-declined to ana"]);
  });

  it("gets no mail where they test for themselves", async () => {
    await inviteTo(access, designer);
    expect(await kinds()).toEqual([]);
  });
});

describe("a tester", () => {
  it("gets the answer to their own question alone, once for several", async () => {
    const [ann, bea] = [await accepted(), await accepted()];
    const { revisionId } = await rowOf(ann.testerId);
    const place = { kind: "row", words: "Cast on", occurrence: 1 } as never;
    const at = { revisionId: revisionId ?? "", place };
    await askQuestion(ann, { ...at, asks: "Why 98?", idempotencyKey: randomUUID() });
    await askQuestion(ann, { ...at, asks: "And then?", idempotencyKey: randomUUID() });
    await askQuestion(bea, { ...at, asks: "Which yarn?", idempotencyKey: randomUUID() });
    await database().testerContact.update({ where: { testerId: ann.testerId }, data: { email: "ann@example.org" } });
    const questions = await database().question.findMany({ select: { id: true } });
    await answerQuestions(access, { questionIds: questions.map(({ id }) => id), answer: "So it fits.", seenAt: null });
    expect((await kinds()).toSorted()).toEqual(["question-answered to ann", "question-answered to bea"]);
    const toBea = (await written()).find(({ address }) => address.startsWith("bea"))?.says;
    expect(toBea).toContain("Which yarn?");
    expect(toBea).not.toContain("Why 98?");
  });

  it("of a correction's size is told of it once", async () => {
    await accepted();
    const { revisionId } = await rowOf(await inviteTo(access));
    await database().message.deleteMany();
    const correction = {
      text: "Cast on 100.",
      revisionId: revisionId ?? "",
      place: null,
      idempotencyKey: randomUUID(),
    };
    await publishCorrection(access, { ...correction, sizes: ["small"] });
    await publishCorrection(access, { ...correction, sizes: ["small"] });
    await publishCorrection(access, { ...correction, idempotencyKey: randomUUID(), sizes: ["large"] });
    expect(await kinds()).toEqual(["correction-published to bea"]);
  });

  it("is thanked for the swatch and for the report, and not for each change of it", async () => {
    const ann = await accepted();
    const send = async (typed: Readonly<Record<string, string>>) => {
      const changes = Object.entries(typed).map(([field, becomes]) => ({ field, was: "", becomes }));
      await saveFields(ann, changes);
      await sendReport(ann, (await readDraft(ann)).version);
    };
    await send(typedSwatch());
    await send({ "reading.bust.2kq.value": "20" });
    await send({ hours: "12" });
    const subjects = (await written()).map(({ says }) => /"subject":"Your (\w+)/.exec(says)?.[1]);
    expect(subjects).toEqual(["swatch", "report"]);
  });

  it("is told when their spot is opened or their test ended; a stop goes to the designer with its reason", async () => {
    const [ann, bea, cem] = [await accepted(), await accepted(), await accepted()];
    await freeSpots(access, [ann.testerId]);
    await endTest(access, bea.testerId);
    await stopTest(cem, { note: "My wrist hurts.", idempotencyKey: randomUUID() });
    await stopTest(cem, { note: "My wrist hurts.", idempotencyKey: randomUUID() });
    expect(await kinds()).toEqual(["place-released to bea", "place-released to bea", "place-given-back to ana"]);
    expect((await written())[2]?.says).toContain("My wrist hurts.");
  });

  it("who deletes their data leaves no message, not even in the designer's", async () => {
    const ann = await accepted();
    await saveFields(ann, [{ field: "hours", was: "", becomes: "12" }]);
    await sendReport(ann, (await readDraft(ann)).version);
    await stopTest(ann, { note: "Marker words", idempotencyKey: randomUUID() });
    expect((await storedDataOfTester(ann)).messages).toBe(2);
    await forgetTester(ann);
    expect(await written()).toEqual([]);
  });

  it("without an address gets none, and of another call neither", async () => {
    const ann = await accepted();
    await database().testerContact.update({ where: { testerId: ann.testerId }, data: { email: null } });
    const other = await callAccess(designer, access.callId, "owner");
    await endTest(other, ann.testerId);
    expect(await written()).toEqual([]);
  });
});
