import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { saveRevision } from "@/features/patterns/mutations";
import { isWornByChild } from "@/features/testing/photos/photo-data";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { earlierTesters, followedCall, testedRevision } from "../../src/features/testing/again/again-data";
import { inviteAgain, startNextCall } from "../../src/features/testing/again/again-mutations";
import { nextListing } from "@/features/recruiting/listing/next-listing-computed";
import { readInvited } from "../../src/features/testing/invited/invited-data";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { agreedSharing } from "../../src/features/testing/photos/sharing-data";
import { archiveCall } from "../../src/features/testing/progress/archive-mutations";
import { closeCall } from "../../src/features/testing/progress/progress-mutations";
import { listingDocument } from "../factories/listing";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall, rowOf, WEEK } from "./invited-tester";
import { typed } from "./typed-listing";

const pattern = patternDocument();
const until = () => new Date(Date.now() + WEEK);

let designer: Viewer;
let first: CallAccess;

/** Somebody who accepted in the first call. */
async function tested(change: Parameters<ReturnType<typeof database>["tester"]["update"]>[0]["data"] = {}) {
  const testerId = await inviteTo(first);
  await database().tester.update({ where: { id: testerId }, data: { acceptedAt: new Date(), ...change } });
  await database().testerContact.update({ where: { testerId }, data: { email: `${testerId}@example.org` } });
  return testerId;
}

async function next(key: string = randomUUID()): Promise<CallAccess> {
  const started = { title: "Second test", typed: nextListing(pattern, { typed: typed(), title: "Second test" }) };
  const { callId } = await startNextCall(first, { ...started, idempotencyKey: key });
  return await callAccess(designer, callId, "owner");
}

beforeEach(async () => {
  designer = await makeViewer("Ana");
  first = await makeCall(designer);
});

it("starts once as a draft with what the earlier listing said, without its days, also after that is closed", async () => {
  await tested();
  expect(await testedRevision(first)).toBe(1);
  await closeCall(first);
  const key = randomUUID();
  const [one, again] = await Promise.all([next(key), next(key)]);
  expect(again.callId).toBe(one.callId);
  expect(await followedCall(one)).toEqual({ callId: first.callId, title: "Test" });
  expect(await followedCall(first)).toBeNull();
  const row = await database().listing.findUniqueOrThrow({ where: { callId: one.callId } });
  expect(row).toMatchObject({
    publishedAt: null,
    document: {
      typed: { title: "Second test", gives: "The pattern.", "wanted.large": "3", startOn: "", reportBy: "" },
    },
  });
});

it("invites those who are chosen again with the newest revision, once, and nobody who is here or stopped", async () => {
  const child = await tested({ isWornByChild: true, unit: "in", timeZone: "Asia/Tokyo" });
  const [other, stopped] = [await tested(), await tested({ stoppedAt: new Date() })];
  await inviteTo(first);
  await saveRevision(first.pattern, { document: patternDocument({ name: "New" }), reason: "x", baseNumber: 1 });
  const second = await next();
  expect((await earlierTesters(second, pattern)).map(({ id }) => id)).toEqual([child, other]);
  expect(await inviteAgain(second, { testerIds: [child, stopped], expiresAt: until() })).toBe(1);
  expect(await inviteAgain(second, { testerIds: [child], expiresAt: until() })).toBe(0);
  const [invited] = await database().tester.findMany({
    where: { callId: second.callId },
    include: { contact: true, revision: { select: { number: true } } },
  });
  expect(invited).toMatchObject({
    ...{ size: "small", unit: "in", timeZone: "Asia/Tokyo", acceptedAt: null, isWornByChild: true },
    ...{ contact: { email: `${child}@example.org` }, revision: { number: 2 } },
  });
  const testerId = invited?.id ?? "";
  await expect(held(testerId)).resolves.toMatchObject({ testerId });
  await database().tester.update({ where: { id: testerId }, data: { acceptedAt: new Date() } });
  const { callId, linkVersion } = await rowOf(testerId);
  const access = { testerId, callId, accountId: null, linkVersion } as TesterAccess;
  expect(await isWornByChild(database(), access)).toBe(true);
  expect((await earlierTesters(second, pattern)).map(({ id }) => id)).toEqual([other]);
  expect(await testedRevision(second)).toBe(2);
});

it("asks those who come again to agree to its agreement, and holds them to the newest", async () => {
  const second = await next();
  const testerId = await inviteTo(second);
  await database().listing.update({
    where: { callId: second.callId },
    data: { document: listingDocument(), publishedAt: new Date(), applyUntil: until() },
  });
  const agreement = { callId: second.callId, text: "Never the text.", finishedPhotos: "release" as const };
  await database().agreement.create({ data: { ...agreement, version: 1 } });
  const accept = async (agreed: number | null) =>
    await acceptInvited(await held(testerId), { viewer: null, ...CHOICES, agreed });
  expect((await readInvited(await held(testerId))).agreement).toEqual({ version: 1, text: "Never the text." });
  await expect(accept(null)).rejects.toMatchObject({ code: "not-allowed" });
  await database().agreement.create({ data: { ...agreement, version: 2, text: "Never any of it." } });
  await expect(accept(1)).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect(await accept(2)).toBe(true);
  const row = await rowOf(testerId);
  expect(row).toMatchObject({ agreementVersion: 2, agreedAt: expect.any(Date) as Date });
  const access = { testerId, callId: second.callId, accountId: null, linkVersion: row.linkVersion } as TesterAccess;
  expect(await agreedSharing(access)).toMatchObject({ finishedPhotos: "release", isReleased: false });
  await expect(
    database().agreement.delete({ where: { callId_version: { callId: second.callId, version: 2 } } }),
  ).rejects.toThrow();
});

it("asks nobody in a test that follows none", async () => {
  const testerId = await inviteTo(first);
  await database().agreement.create({ data: { callId: first.callId, version: 1, text: "Never the text." } });
  expect((await readInvited(await held(testerId))).agreement).toBeNull();
  expect(await acceptInvited(await held(testerId), { viewer: null, ...CHOICES })).toBe(true);
});

it("knows who is here already by their account", async () => {
  const bea = await makeViewer("Bea");
  await tested({ accountId: bea.accountId });
  const second = await next();
  expect(await earlierTesters(second, pattern)).toHaveLength(1);
  await inviteTo(second, bea);
  expect(await earlierTesters(second, pattern)).toEqual([]);
});

it("is started and filled by editors alone, from their own call, and stays when the earlier one is archived", async () => {
  const testerId = await tested();
  const [sam, vera] = [await makeViewer("Sam"), await makeViewer("Vera")];
  const elsewhere = await makeCall(sam);
  const { patternId } = first.pattern;
  await database().membership.create({ data: { patternId, accountId: vera.accountId, role: "viewer" } });
  const looks = await callAccess(vera, first.callId, "viewer");
  const stolen = { ...elsewhere, callId: first.callId } as CallAccess;
  const listing = { title: "Mine", typed: {} };
  for (const theirs of [looks, stolen])
    await expect(startNextCall(theirs, { ...listing, idempotencyKey: randomUUID() })).rejects.toMatchObject({
      code: "not-found",
    });
  const second = await next();
  await expect(
    inviteAgain(await callAccess(vera, second.callId, "viewer"), { testerIds: [testerId], expiresAt: until() }),
  ).rejects.toMatchObject({ code: "closed" });
  expect(await inviteAgain(elsewhere, { testerIds: [testerId], expiresAt: until() })).toBe(0);
  await closeCall(first);
  await archiveCall(first);
  expect(await inviteAgain(second, { testerIds: [testerId], expiresAt: until() })).toBe(1);
});
