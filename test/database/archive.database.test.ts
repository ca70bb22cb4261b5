import { beforeEach, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { archivedCalls } from "@/features/calls/archived-data";
import { currentCall } from "@/features/calls/data";
import { patternStandings } from "@/features/calls/standing-data";
import { writeMessages } from "@/features/mail/mutations";
import { listCalls, listPatterns } from "@/features/patterns/data";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { archiveCall, restoreCall } from "../../src/features/testing/progress/archive-mutations";
import { closeCall, reopenCall } from "../../src/features/testing/progress/progress-mutations";
import { makeViewer } from "./make-account";
import { held, inviteTo, makeCall } from "./invited-tester";
import { CONTENT } from "./outbox-work";

// Before the settings are first read; nothing is sent here.
process.env.SMTP_URL = "smtp://127.0.0.1:9";
process.env.MAIL_FROM = "mail@sizes.example";

let designer: Viewer;
let access: CallAccess;

beforeEach(async () => {
  designer = await makeViewer("Ana");
  access = await makeCall(designer);
});

const titles = async () => (await archivedCalls(designer)).map(({ title }) => title);

it("takes a closed call out of all lists and back; an open or archived one stays as it is", async () => {
  await expect(archiveCall(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
  await closeCall(access);
  await archiveCall(access);
  await expect(archiveCall(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
  await expect(reopenCall(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect(await currentCall(access)).toMatchObject({ status: "closed", isArchived: true });
  expect(await listCalls(access.pattern)).toMatchObject({ calls: [], archivedCalls: 1 });
  expect(await patternStandings(access.pattern)).toEqual([]);
  expect(await listPatterns(designer)).toMatchObject([{ calls: [], archivedCalls: 1 }]);
  expect(await titles()).toEqual(["Test"]);

  await restoreCall(access);
  await expect(restoreCall(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect((await listCalls(access.pattern)).calls).toHaveLength(1);
  expect(await titles()).toEqual([]);
  await reopenCall(access);
  expect(await currentCall(access)).toMatchObject({ status: "open", isArchived: false });
});

it("sends testers nothing for an archived call, and discards what waits; what was sent stays noted", async () => {
  const messages = () => database().message.findMany({ where: { callId: access.callId }, select: { sentAt: true } });
  const write = (callId: string, kind: "place-offered" | "deletion-soon" = "place-offered", accountId?: string) =>
    inTransaction((transaction) =>
      writeMessages(transaction, [{ kind, address: "a@b.example", content: CONTENT, about: { callId, accountId } }]),
    );
  await inviteTo(access);
  await write(access.callId);
  const [first] = await database().message.findMany({ where: { callId: access.callId }, select: { id: true } });
  await database().message.update({ where: { id: first?.id ?? "" }, data: { dueAt: null, sentAt: new Date() } });
  await closeCall(access);
  await archiveCall(access);
  expect(await messages()).toEqual([{ sentAt: expect.any(Date) as Date }]);
  await write(access.callId);
  expect(await messages()).toHaveLength(1);
  // The designer is told what will be deleted, wherever they put the test.
  await write(access.callId, "deletion-soon", designer.accountId);
  expect(await messages()).toHaveLength(2);
  await restoreCall(access);
  await write(access.callId);
  expect(await messages()).toHaveLength(3);
});

it("is for editors alone, and testers still reach their test by their link", async () => {
  const testerId = await inviteTo(access);
  const [sam, vera] = [await makeViewer("Sam"), await makeViewer("Vera")];
  const elsewhere = await makeCall(sam);
  const { patternId } = access.pattern;
  await database().membership.create({ data: { patternId, accountId: vera.accountId, role: "viewer" } });
  const looks = await callAccess(vera, access.callId, "viewer");
  await closeCall(access);
  const stolen = { ...elsewhere, callId: access.callId } as CallAccess;
  for (const theirs of [looks, stolen])
    await expect(archiveCall(theirs)).rejects.toMatchObject({ code: "changed-meanwhile" });
  await archiveCall(access);
  for (const theirs of [looks, stolen])
    await expect(restoreCall(theirs)).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect(await archivedCalls(sam)).toEqual([]);
  expect(await archivedCalls(vera)).toHaveLength(1);
  await expect(held(testerId)).resolves.toMatchObject({ testerId });
});
