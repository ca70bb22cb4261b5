import { expect, it, vi } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { loadEditedMessage } from "../../src/features/testing/messages/message-change-loaders";
import { dropWords, storeWords, switchMail } from "../../src/features/testing/messages/message-change-mutations";
import { writeReminders } from "../../src/features/testing/reminders/reminder-mutations";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall } from "./invited-tester";
import { startMailServer } from "./mail-server";
import { emptyOutbox, work } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

emptyOutbox(server);

/** In Tokyo, where the report is due on 2 May: the morning before is 30 April 23:00 UTC. */
const DUE = new Date("2090-04-30T23:00:00Z");
const WORDS = {
  subject: "Nearly there, [name]",
  text: "Size [size] is due tomorrow, [name].",
  note: "I am away on Sunday.",
};

async function accepted(): Promise<{ readonly access: CallAccess; readonly testerId: string }> {
  vi.setSystemTime("2090-01-01T00:00:00Z");
  const access = await makeCall(await makeViewer("Ana"));
  const testerId = await inviteTo(access);
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  const dates = { startOn: "2090-02-01", swatchBy: "2090-02-20", reportBy: "2090-05-01" };
  await database().tester.update({ where: { id: testerId }, data: { dates } });
  await database().message.deleteMany();
  return { access, testerId };
}

async function store(access: CallAccess, changed: Partial<typeof WORDS & { version: number }> = {}) {
  const { original } = await loadEditedMessage(access, "report-tomorrow");
  return await storeWords(access, { kind: "report-tomorrow", version: 0, ...WORDS, ...changed, original });
}

it("is sent in the designer’s words with their note, filled in, and in Sizewright’s again", async () => {
  const { access, testerId } = await accepted();
  expect(await store(access)).toEqual({});
  await writeReminders(DUE);
  await work();
  expect(server.taken[0]?.subject).toBe("Nearly there, Bea");
  expect(server.taken[0]?.text).toContain("Size S is due tomorrow, Bea.\n\nI am away on Sunday.\n\nStart: ");
  expect(server.taken[0]?.text).not.toContain("Your report is due tomorrow");
  await dropWords(access, { kind: "report-tomorrow", version: 1 });
  await database().reminder.deleteMany({ where: { testerId } });
  await writeReminders(DUE);
  await work();
  expect(server.taken[1]?.subject).toContain("is due tomorrow");
  expect(server.taken[1]?.text).toContain("I am away on Sunday.");
});

it("is refused with a field that is unknown, or not known for somebody, and then nothing is stored", async () => {
  const { access, testerId } = await accepted();
  expect(await store(access, { text: "Dear [nmae]," })).toEqual({ text: expect.stringContaining("“[nmae]”") });
  await database().tester.update({ where: { id: testerId }, data: { dates: Prisma.DbNull } });
  expect(await store(access, { text: "By [report day]," })).toEqual({
    text: "“[report day]” is not known for Bea. Leave it out.",
  });
  expect(await database().callMessage.count({ where: { callId: access.callId } })).toBe(0);
});

it("asks the later of two designers, who may still put theirs in its place", async () => {
  const { access } = await accepted();
  await store(access);
  await expect(store(access, { text: "Mine" })).rejects.toMatchObject({
    code: "changed-meanwhile",
    message: expect.stringContaining(WORDS.text),
  });
  expect(await store(access, { text: "Mine", version: 1 })).toEqual({});
  const { change } = await loadEditedMessage(access, "report-tomorrow");
  expect(change).toMatchObject({ version: 2, words: { text: "Mine" } });
});

it("is not sent where it is switched off, whatever else is changed, and never where testers need it", async () => {
  const { access, testerId } = await accepted();
  await switchMail(access, { kind: "report-tomorrow", isOff: true });
  expect(await store(access)).toEqual({});
  await writeReminders(DUE);
  expect(await database().reminder.count({ where: { testerId } })).toBe(0);
  await switchMail(access, { kind: "report-tomorrow", isOff: false });
  await writeReminders(DUE);
  expect(await database().reminder.count({ where: { testerId } })).toBe(1);
  await expect(switchMail(access, { kind: "place-accepted", isOff: true })).rejects.toMatchObject({
    code: "not-found",
  });
});

it("keeps up with the pattern’s name where only a note is added, and is nobody else’s to change", async () => {
  const { access } = await accepted();
  const { original } = await loadEditedMessage(access, "report-tomorrow");
  expect(await store(access, original)).toEqual({});
  expect((await loadEditedMessage(access, "report-tomorrow")).change.words).toBeNull();
  await expect(callAccess(await makeViewer("Eva"), access.callId, "editor")).rejects.toMatchObject({
    code: "not-found",
  });
});
