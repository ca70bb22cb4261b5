import { randomUUID } from "node:crypto";
import { expect, it, vi } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { askAboutNumber } from "@/features/testing/asked/asked-mutations";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { answerQuestions, askQuestion } from "@/features/testing/questions/mutations";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import { markPublished } from "../../src/features/testing/errata/publish-mutations";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import {
  CHANGEABLE_KINDS,
  CHANGEABLE_MAIL,
  MAIL_GROUPS,
  type ChangeableKind,
} from "../../src/features/testing/messages/changeable-kinds";
import { loadEditedMessage } from "../../src/features/testing/messages/message-change-loaders";
import { storeWords, switchMail } from "../../src/features/testing/messages/message-change-mutations";
import { sendLinkAgain } from "../../src/features/testing/progress/mail-mutations";
import { endTest } from "../../src/features/testing/progress/person-mutations";
import { withdrawInvited } from "../../src/features/testing/progress/progress-mutations";
import { freeSpots } from "../../src/features/testing/progress/spot-mutations";
import { writeReminders } from "../../src/features/testing/reminders/reminder-mutations";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall, rowOf } from "./invited-tester";
import { startMailServer } from "./mail-server";
import { emptyOutbox, work } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

emptyOutbox(server);

/** Somebody who has accepted, with no mail so far. */
async function accepted(access: CallAccess): Promise<TesterAccess> {
  const testerId = await inviteTo(access);
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  await database().message.deleteMany();
  return { testerId, callId: access.callId, accountId: null, linkVersion: 1 } as TesterAccess;
}

async function store(access: CallAccess, kind: ChangeableKind): Promise<void> {
  const { original } = await loadEditedMessage(access, kind);
  const words = { subject: `Own words, [name]`, text: "About size [size], [name].", note: "I am away on Sunday." };
  expect(await storeWords(access, { kind, version: 0, ...words, original })).toEqual({});
}

/** All texts that the mail server took since the last time. */
async function sent() {
  await work();
  return server.taken.splice(0).map(({ subject, text }) => `${subject}\n${text}`);
}

const OWN = /^Own words, Bea\nHello Bea,\n\nAbout size S, Bea\.\n\nI am away on Sunday\.\n\n/;

async function answer(access: CallAccess, tester: TesterAccess): Promise<void> {
  const { revisionId } = await rowOf(tester.testerId);
  const at = { revisionId: revisionId ?? "", place: { kind: "row", words: "Cast on", occurrence: 1 } as never };
  await askQuestion(tester, { ...at, asks: "Why 98?", idempotencyKey: randomUUID() });
  const [question] = await database().question.findMany({ where: { testerId: tester.testerId, answer: null } });
  await answerQuestions(access, { questionIds: [question?.id ?? ""], answer: "So it fits.", seenAt: null });
}

async function askNumber(access: CallAccess, tester: TesterAccess): Promise<void> {
  await saveFields(tester, [{ field: "reading.bust.2kq.value", was: "", becomes: "50" }]);
  await sendReport(tester, (await readDraft(tester)).version);
  await database().message.deleteMany();
  const number = { part: "readings", position: 0 } as const;
  await askAboutNumber(access, { ...tester, number, asks: "Was it flat?", idempotencyKey: randomUUID() });
}

async function correct(access: CallAccess, { testerId }: TesterAccess): Promise<void> {
  const { revisionId } = await rowOf(testerId);
  const [{ id: count } = { id: "" }] = patternDocument().counts;
  const number = (size: string, becomes: number) => ({ count, size, was: becomes - 1, becomes });
  await publishCorrection(access, {
    ...{ text: "One more.", revisionId: revisionId ?? "", place: null, sizes: [], idempotencyKey: randomUUID() },
    numbers: [number("small", 4321), number("large", 8765)],
  });
}

/** What causes each kind, and what stays in it whatever words the designer chooses. */
const CAUSES: readonly {
  readonly kind: ChangeableKind;
  readonly cause: (access: CallAccess, tester: TesterAccess) => Promise<unknown>;
  readonly keeps: readonly string[];
}[] = [
  {
    ...{ kind: "question-answered", cause: answer },
    keeps: ["You asked:\n\n> Why 98?\n\nMy answer:\n\n> So it fits.", "/invited/"],
  },
  { kind: "number-asked", cause: askNumber, keeps: ["You entered: 50", "> Was it flat?", "/invited/"] },
  {
    ...{ kind: "correction-published", cause: correct },
    keeps: ["The correction:\n\n> One more.", "4321 instead of 4320", "/invited/"],
  },
  { kind: "spot-opened", cause: (access, { testerId }) => freeSpots(access, [testerId]), keeps: ["/invited/"] },
  { kind: "test-ended", cause: (access, { testerId }) => endTest(access, testerId), keeps: ["/invited/"] },
];

for (const { kind, cause, keeps } of CAUSES)
  it(`is written around what ${kind} is about, and not sent at all where it is switched off`, async () => {
    const access = await makeCall(await makeViewer("Ana"));
    await store(access, kind);
    await cause(access, await accepted(access));
    const [message = "", ...others] = await sent();
    expect(others).toEqual([]);
    expect(message).toMatch(OWN);
    for (const kept of keeps) expect(message).toContain(kept);
    expect(message).not.toContain("8765");
    await switchMail(access, { kind, isOff: true });
    await cause(access, await accepted(access));
    expect(await sent()).toEqual([]);
  });

it("withdraws an offer in the designer’s words, or without a message", async () => {
  const access = await makeCall(await makeViewer("Ana"));
  await store(access, "offer-withdrawn");
  const [first, second] = [await inviteTo(access), await inviteTo(access)];
  await database().message.deleteMany();
  await withdrawInvited(access, first);
  expect(await sent()).toEqual([expect.stringMatching(OWN)]);
  await switchMail(access, { kind: "offer-withdrawn", isOff: true });
  await withdrawInvited(access, second);
  expect(await sent()).toEqual([]);
});

it("sends a tester their link again in the designer’s words", async () => {
  const access = await makeCall(await makeViewer("Ana"));
  const { testerId } = await accepted(access);
  await store(access, "own-link");
  await sendLinkAgain(access, testerId);
  expect(await sent()).toEqual([expect.stringMatching(OWN)]);
});

it("keeps what is due in the weekly message, below the designer’s words", async () => {
  vi.setSystemTime("2090-01-01T00:00:00Z");
  const access = await makeCall(await makeViewer("Ana"));
  const { testerId } = await accepted(access);
  const dates = { startOn: "2090-02-01", swatchBy: "2090-02-20", reportBy: "2090-05-01" };
  await database().tester.update({ where: { id: testerId }, data: { dates, reminders: "weekly" } });
  await store(access, "this-week");
  // Half way is on Saturday 18 March in Tokyo.
  await writeReminders(new Date("2090-03-12T23:00:00Z"));
  const [message] = await sent();
  expect(message).toMatch(OWN);
  expect(message).toContain("Sunday.\n\nThis week the test is half way through.");
});

it("tells of the release in each test’s own words, and always what may be shown", async () => {
  const access = await makeCall(await makeViewer("Ana"));
  const places = { small: { least: 1, wanted: 1, most: 20 }, large: { least: 1, wanted: 1, most: 20 } };
  const { callId } = await inTransaction((connection) =>
    createCall(access.pattern, { title: "Another", places }, connection),
  );
  const owner = { accountId: access.pattern.accountId, name: "Ana", email: "ana@example.org", unit: "cm" } as const;
  const another = await callAccess(owner, callId, "owner");
  for (const call of [access, another]) {
    const { testerId } = await accepted(call);
    await database().agreement.create({
      data: { callId: call.callId, version: 1, text: "Wait.", progressPhotos: "never", finishedPhotos: "release" },
    });
    await database().tester.update({
      where: { id: testerId },
      data: { agreementVersion: 1, agreedAt: new Date(), reportedAt: new Date() },
    });
  }
  await store(another, "pattern-released");
  await markPublished(access.pattern, { revisionNumber: 1, label: "1.0", publishedAt: new Date() });
  const messages = await sent();
  expect(messages).toHaveLength(2);
  expect(messages.filter((message) => OWN.test(message))).toHaveLength(1);
  for (const message of messages) expect(message).toContain("you may now show");
  await expect(switchMail(access, { kind: "pattern-released", isOff: true })).rejects.toMatchObject({
    code: "not-found",
  });
});

it("lists each kind once, and says why where it cannot be switched off", async () => {
  expect(MAIL_GROUPS.flatMap(({ kinds }) => kinds).toSorted()).toEqual(CHANGEABLE_KINDS.toSorted());
  const access = await makeCall(await makeViewer("Ana"));
  await accepted(access);
  for (const kind of CHANGEABLE_KINDS) {
    const { original, testers } = await loadEditedMessage(access, kind);
    expect(original.text, kind).not.toBe("");
    if (!kind.startsWith("application") && kind !== "no-place")
      expect(testers.map(({ name }) => name, kind)).toEqual(["Bea"]);
    const isOff = switchMail(access, { kind, isOff: true });
    if (CHANGEABLE_MAIL[kind].whyAlways === undefined) await isOff;
    else await expect(isOff, kind).rejects.toMatchObject({ code: "not-found" });
  }
});
