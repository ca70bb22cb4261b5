import { expect, it } from "vitest";
import { database } from "@/server/database";
import { remindersAccess } from "@/features/recruiting/invitations/reminders-access";
import { linkTo } from "@/server/link-key";
import { readLinkedCalendar } from "../../src/features/testing/calendar/calendar-data";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { listingDocument } from "../factories/listing";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall } from "./invited-tester";

const DATES = { startOn: "2090-02-01", swatchBy: "2090-02-20", reportBy: "2090-05-01" };

it("has a sequence that rises with each change of its days, and days where the tester is", async () => {
  const { callId, ...access } = await makeCall(await makeViewer("Ana"));
  const testerId = await inviteTo({ callId, ...access });
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  const link = linkTo("reminders", { id: testerId, version: 1 });
  const read = async () => await readLinkedCalendar(await remindersAccess(link));
  await expect(read()).rejects.toMatchObject({ code: "not-found" });
  const change = (data: object) => database().tester.update({ where: { id: testerId }, data });
  await change({ dates: DATES });
  const first = await read();
  // A deadline at midnight UTC is nine in the morning of the next day in Tokyo.
  expect(first.days).toEqual({ startOn: "2090-02-01", swatchBy: "2090-02-21", reportBy: "2090-05-02" });
  expect(first.isOver).toBe(false);
  await change({ note: "Nothing about dates" });
  expect((await read()).sequence).toBe(first.sequence);
  const changes = [
    () => change({ dates: { ...DATES, reportBy: "2090-06-01" } }),
    () => change({ timeZone: "UTC" }),
    () => database().call.update({ where: { id: callId }, data: { status: "closed" } }),
    () => database().call.update({ where: { id: callId }, data: { status: "open" } }),
    () => change({ stoppedAt: new Date() }),
  ];
  const seen = [first];
  for (const make of changes) {
    await make();
    seen.push(await read());
  }
  expect(seen.map(({ sequence }) => sequence - first.sequence)).toEqual([0, 1, 2, 3, 4, 5]);
  expect(seen.map(({ isOver }) => isOver)).toEqual([false, false, false, true, false, true]);
  expect(seen[2]?.days.reportBy).toBe("2090-06-01");
});

it("rises too where the call’s own dates move", async () => {
  const { callId, ...access } = await makeCall(await makeViewer("Ana"));
  const testerId = await inviteTo({ callId, ...access });
  const listing = { callId, document: listingDocument(), publishedAt: new Date(), applyUntil: new Date() };
  await database().listing.create({ data: listing });
  const read = async () =>
    await readLinkedCalendar(await remindersAccess(linkTo("reminders", { id: testerId, version: 1 })));
  const first = await read();
  await database().listing.update({ where: { callId }, data: { version: { increment: 1 } } });
  expect((await read()).sequence).toBe(first.sequence + 1);
});
