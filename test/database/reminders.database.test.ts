import { randomUUID } from "node:crypto";
import { expect, it, vi } from "vitest";
import type { CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { nextReminded, writeReminders } from "../../src/features/testing/reminders/reminder-mutations";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall, rowOf } from "./invited-tester";
import { refusal, startMailServer } from "./mail-server";
import { emptyOutbox, work } from "./outbox-work";
import { remindersAccess } from "@/features/recruiting/invitations/reminders-access";
import { linkTo } from "@/server/link-key";
import { readLinkedChoice, readMailChoices } from "../../src/features/testing/reminders/choice-data";
import { storeLinkedChoice, storeMailChoices } from "../../src/features/testing/reminders/choice-mutations";
import { stopByLink } from "../../src/features/testing/reminders/stop-mutations";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const { takenAddresses } = emptyOutbox(server);

/** Somebody in Tokyo who has accepted, with days of their own in UTC and no mail so far. */
async function accepted(access: CallAccess): Promise<string> {
  vi.setSystemTime("2090-01-01T00:00:00Z");
  const testerId = await inviteTo(access);
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  const dates = { startOn: "2090-02-01", swatchBy: "2090-02-20", reportBy: "2090-05-01" };
  await database().tester.update({ where: { id: testerId }, data: { dates } });
  await database().message.deleteMany();
  return testerId;
}

/** The report's last moment is 2 May 09:00 in Tokyo, where it is nine hours later: the morning before is 30 April 23:00 UTC. */
const DUE = new Date("2090-04-30T23:00:00Z");

it("are written once by two workers, at the tester's morning, and sent", async () => {
  await accepted(await makeCall(await makeViewer("Ana")));
  await writeReminders(new Date(DUE.getTime() - 1));
  expect(await database().message.count()).toBe(0);
  expect(await nextReminded(DUE)).not.toBeNull();
  await Promise.all([writeReminders(DUE), writeReminders(DUE)]);
  await writeReminders(DUE);
  expect(await nextReminded(DUE)).toBeNull();
  expect(await work()).toBe(1);
  expect(takenAddresses()).toEqual(["bea@example.org"]);
  expect(server.taken[0]?.subject).toContain("is due tomorrow");
  expect(server.taken[0]?.text).toContain("Tokyo");
});

it("ask for the answer to a correction of their size once more, until they give it", async () => {
  const call = await makeCall(await makeViewer("Ana"));
  const testerId = await accepted(call);
  const { revisionId, size } = await database().tester.findUniqueOrThrow({ where: { id: testerId } });
  const publish = async (sizes: string[]) =>
    await database().correction.create({
      data: { callId: call.callId, revisionId: revisionId ?? "", sizes, text: "Twice.", idempotencyKey: randomUUID() },
    });
  await publish(["another"]);
  // At 9 in the morning of 1 January in Tokyo: three days later at 8, it is 23:00 of the day before in UTC.
  const morning = new Date("2090-01-03T23:00:00Z");
  expect(await nextReminded(morning)).toBeNull();
  const { id: correctionId } = await publish([size]);
  expect(await nextReminded(new Date(morning.getTime() - 1))).toBeNull();
  expect(await nextReminded(morning)).toBe(testerId);
  await database().correctionAnswer.create({ data: { correctionId, testerId, answer: "following" } });
  expect(await nextReminded(morning)).toBeNull();
  await database().correctionAnswer.deleteMany();
  await writeReminders(morning);
  await writeReminders(morning);
  expect(await work()).toBe(1);
  expect(server.taken[0]?.subject).toMatch(/^A correction to .* waits for your answer$/);
});

it("come again for a moved date, and not to who has stopped or after a day", async () => {
  const testerId = await accepted(await makeCall(await makeViewer("Ana")));
  await writeReminders(DUE);
  const dates = { startOn: "2090-02-01", swatchBy: "2090-02-20", reportBy: "2090-06-01" };
  await database().tester.update({ where: { id: testerId }, data: { dates } });
  await writeReminders(new Date("2090-05-31T23:30:00Z"));
  expect((await database().reminder.findMany({ where: { testerId } })).map(({ kind }) => kind)).toEqual([
    "report-tomorrow",
    "report-tomorrow",
  ]);
  await writeReminders(new Date("2090-06-07T12:00:00Z"));
  await database().tester.update({ where: { id: testerId }, data: { stoppedAt: new Date() } });
  await writeReminders(new Date("2090-06-05T23:30:00Z"));
  expect(await database().reminder.count({ where: { testerId } })).toBe(2);
  expect((await rowOf(testerId)).stoppedByDesigner).toBe(false);
});

it("are not sent to an address that refused one", async () => {
  const testerId = await accepted(await makeCall(await makeViewer("Ana")));
  server.behaviour = { recipient: () => refusal(550, "5.1.1 No such user") };
  await writeReminders(DUE);
  await work();
  server.behaviour = {};
  await writeReminders(new Date("2090-05-05T23:30:00Z"));
  await work();
  expect(await database().message.count({ where: { testerId, sentAt: null, failedAt: { not: null } } })).toBe(2);
  expect(server.taken).toEqual([]);
});

/** The address that a mail reader is given to unsubscribe, as it stands in the mail. */
function stopAddress(): URL {
  const field = server.taken.at(-1)?.headerLines.find(({ key }) => key === "list-unsubscribe")?.line ?? "";
  return new URL(/<(.*)>/.exec(field)?.[1] ?? "");
}

it("say how to get none, and come no more to whoever unsubscribed by POST, though their dates move", async () => {
  const testerId = await accepted(await makeCall(await makeViewer("Ana")));
  await writeReminders(DUE);
  await work();
  const [mail] = server.taken;
  expect(mail?.headerLines.map(({ line }) => line)).toContain("List-Unsubscribe-Post: List-Unsubscribe=One-Click");
  const [, , link = "", last] = stopAddress().pathname.split("/");
  expect(last).toBe("stop");
  expect(mail?.text).toContain(`/reminders/${link}\n`);
  expect(await stopByLink(`${testerId}.${"x".repeat(43)}`)).toBe(false);
  expect((await readLinkedChoice(await remindersAccess(link))).choice).toBe("all");
  expect(await stopByLink(link)).toBe(true);
  expect((await readLinkedChoice(await remindersAccess(link))).choice).toBe("none");
  const dates = { startOn: "2090-02-01", swatchBy: "2090-02-20", reportBy: "2090-06-01" };
  await database().tester.update({ where: { id: testerId }, data: { dates } });
  await writeReminders(new Date("2090-05-31T23:30:00Z"));
  expect(await database().reminder.count({ where: { testerId } })).toBe(1);
});

it("keep to the choice of an account in all its tests, and to none that was chosen before", async () => {
  const [ana, bea] = [await makeViewer("Ana"), await makeViewer("Bea")];
  const testers = [await accepted(await makeCall(ana)), await accepted(await makeCall(ana))];
  const [first = "", second = ""] = testers;
  await storeLinkedChoice(await byLink(first), "weekly");
  await database().tester.updateMany({ where: { id: { in: testers } }, data: { accountId: bea.accountId } });
  const choices = () => Promise.all(testers.map(async (id) => (await readLinkedChoice(await byLink(id))).choice));
  expect(await choices()).toEqual(["weekly", "all"]);
  await storeLinkedChoice(await byLink(second), "none");
  expect(await choices()).toEqual(["none", "none"]);
  await storeMailChoices(bea, { reminders: "all", dailySummary: false, timeZone: "Pacific/Apia" });
  expect(await choices()).toEqual(["all", "all"]);
  expect(await readMailChoices(bea)).toEqual({ reminders: "all", dailySummary: false, timeZone: "Pacific/Apia" });
});

const byLink = (id: string) => remindersAccess(linkTo("reminders", { id, version: 1 }));

it("hold a week for those who want one e-mail a week", async () => {
  const testerId = await accepted(await makeCall(await makeViewer("Ana")));
  await storeLinkedChoice(await byLink(testerId), "weekly");
  // Half way is on Saturday 18 March in Tokyo.
  await writeReminders(new Date("2090-03-12T23:00:00Z"));
  await work();
  expect(server.taken[0]?.subject).toBe("This week in the test of “Test vest”");
  expect(server.taken[0]?.text).toContain("half way");
});
