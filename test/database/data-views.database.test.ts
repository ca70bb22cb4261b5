import { beforeEach, expect, it } from "vitest";
import { recordSeen } from "@/features/recruiting/views/seen-data";
import { dataViews } from "@/features/recruiting/views/view-data";
import { nextViewPurge, purgeViews } from "@/features/recruiting/views/purge-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { makeTester } from "./make-tester";
import { makeViewer } from "./make-account";
import { joinCall, makePublishedCall, type PublishedCallMade } from "./published-call";

const DAY_MS = 24 * 60 * 60_000;
let made: PublishedCallMade;
let ann: TesterAccess;

beforeEach(async () => {
  made = await makePublishedCall();
  const revision = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  ann = await makeTester({ designer: made.owner, call: made.access, revisionId: revision.id });
});

async function viewsOf({ testerId }: TesterAccess): Promise<string[]> {
  return (await dataViews({ testerId })).map(({ viewer, kind }) => `${viewer ?? "nobody"}: ${kind}`);
}

it("is noted once a day for each who looks, however often and however many at once", async () => {
  const helper = await joinCall(made, "viewer");
  const seen = { kind: "page", testers: [ann.testerId, ann.testerId] } as const;
  await Promise.all([1, 2, 3].map(() => recordSeen(made.access, seen)));
  await recordSeen(made.access, { kind: "photos", testers: [ann.testerId] });
  await recordSeen(helper.access, seen, new Date(Date.now() + 1_000));
  expect((await viewsOf(ann)).toSorted()).toEqual(
    ["Ana: page", "Ana: photos", `${helper.viewer.name}: page`].toSorted(),
  );
  await recordSeen(made.access, seen, new Date(Date.now() + DAY_MS));
  expect(await viewsOf(ann)).toHaveLength(4);
});

it("is noted of everybody whose measurements a file holds, and of nobody in another call", async () => {
  const other = await makePublishedCall();
  await recordSeen(other.access, { kind: "measurements", testers: [ann.testerId] });
  await recordSeen(other.access, { kind: "measurements", testers: "all", applications: "all" });
  expect(await viewsOf(ann)).toEqual([]);
  await recordSeen(made.access, { kind: "measurements", testers: "all" });
  expect(await viewsOf(ann)).toEqual(["Ana: measurements"]);
});

it("leaves out what people look at of themselves", async () => {
  await database().tester.update({ where: { id: ann.testerId }, data: { accountId: made.owner.accountId } });
  await recordSeen(made.access, { kind: "page", testers: [ann.testerId] });
  expect(await viewsOf(ann)).toEqual([]);
});

it("keeps that somebody looked when their account is deleted, and goes with the tester", async () => {
  const viewer = await makeViewer("Kofi");
  await database().membership.create({
    data: { patternId: made.patternId, accountId: viewer.accountId, role: "viewer" },
  });
  const access = { ...made.access, pattern: { ...made.access.pattern, accountId: viewer.accountId } };
  await recordSeen(access, { kind: "page", testers: [ann.testerId] });
  await database().account.delete({ where: { id: viewer.accountId } });
  expect(await viewsOf(ann)).toEqual(["nobody: page"]);
  await database().tester.delete({ where: { id: ann.testerId } });
  expect(await viewsOf(ann)).toEqual([]);
});

it("is deleted after a year", async () => {
  await recordSeen(made.access, { kind: "page", testers: [ann.testerId] }, new Date(Date.now() - 366 * DAY_MS));
  await recordSeen(made.access, { kind: "page", testers: [ann.testerId] });
  expect(await nextViewPurge()).not.toBeNull();
  await purgeViews();
  expect(await nextViewPurge()).toBeNull();
  expect(await viewsOf(ann)).toEqual(["Ana: page"]);
});
