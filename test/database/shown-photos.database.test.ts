import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { publishedCall } from "@/features/recruiting/listing/access";
import { photoAccess, photoScope } from "@/features/testing/photos/photo-access";
import { storeConsent } from "@/features/testing/photos/photo-mutations";
import { readSheetPhotos } from "@/features/testing/photos/photo-sheet-data";
import type { PhotoView } from "@/features/testing/photos/photo-views";
import { database } from "@/server/database";
import type { TesterAccess } from "@/features/testing/home/access";
import { showPhoto } from "../../src/features/testing/photos/show-mutations";
import { readShownPhotos } from "../../src/features/testing/photos/shown-photo-data";
import { makeTester } from "./make-tester";
import { joinCall, makePublishedCall, type PublishedCallMade } from "./published-call";

let made: PublishedCallMade;
let bea: TesterAccess;

async function photo(view: PhotoView = "front", testerId = bea.testerId): Promise<string> {
  const id = randomUUID();
  await database().photo.create({ data: { id, testerId, view, state: "ready", bytes: 1 } });
  return id;
}

const show = async (photoId: string, isShown = true) => await showPhoto(made.access, { photoId, isShown });

const publicPhotos = async () => await readShownPhotos(await publishedCall(made.callId));

async function isServed(photoId: string): Promise<boolean> {
  const shown = await publicPhotos();
  if (!shown.some((one) => one.photoId === photoId)) return false;
  const access = await photoAccess(photoId);
  return (await database().photo.count({ where: photoScope(access) })) === 1;
}

beforeEach(async () => {
  made = await makePublishedCall();
  const { id: revisionId } = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  bea = await makeTester({ designer: made.owner, call: made.access, revisionId });
  await database().testerContact.create({ data: { testerId: bea.testerId, name: "Bea", creditName: "B. Knits" } });
});

it("shows those that the designer chose of those that testers allow, with the name that they wish", async () => {
  const [front, back] = [await photo(), await photo("back")];
  await expect(show(front)).rejects.toMatchObject({ code: "changed-meanwhile" });
  await storeConsent(bea, ["social_media"]);
  await expect(show(front)).rejects.toMatchObject({ code: "changed-meanwhile" });
  await storeConsent(bea, ["pattern_page"]);
  expect(await publicPhotos()).toEqual([]);
  await show(front);
  expect(await publicPhotos()).toEqual([{ photoId: front, view: "front", size: "small", creditName: "B. Knits" }]);
  expect(await isServed(front)).toBe(true);
  expect((await readSheetPhotos(made.access)).map(({ photoId, isShown }) => [photoId, isShown])).toEqual([
    [front, true],
    [back, false],
  ]);
  await show(front, false);
  expect(await isServed(front)).toBe(false);
});

it("is gone at once when consent is withdrawn, for whoever held the proof too, and does not come back by itself", async () => {
  const front = await photo();
  await storeConsent(bea, ["pattern_page"]);
  await show(front);
  const proved = await photoAccess(front);
  await storeConsent(bea, []);
  expect(await publicPhotos()).toEqual([]);
  expect(await database().photo.count({ where: photoScope(proved) })).toBe(0);
  await storeConsent(bea, ["pattern_page"]);
  expect(await publicPhotos()).toEqual([]);
});

it("shows nothing of a child’s garment, whoever agreed, and no photo of a problem", async () => {
  const problem = await photo("problem");
  await storeConsent(bea, ["pattern_page"]);
  await expect(show(problem)).rejects.toMatchObject({ code: "changed-meanwhile" });
  const front = await photo();
  await show(front);
  await database().tester.update({ where: { id: bea.testerId }, data: { isWornByChild: true } });
  expect(await publicPhotos()).toEqual([]);
  expect((await readSheetPhotos(made.access)).map(({ isShown }) => isShown)).toEqual([null, null]);
  await show(front, false);
  await expect(show(front)).rejects.toMatchObject({ code: "changed-meanwhile" });
});

it("is shown only while a call of the pattern is published, and chosen by its editors alone", async () => {
  const front = await photo();
  await storeConsent(bea, ["pattern_page"]);
  const viewer = await joinCall(made, "viewer");
  const other = await makePublishedCall();
  for (const access of [viewer.access, other.access])
    await expect(showPhoto(access, { photoId: front, isShown: true })).rejects.toMatchObject({ code: "not-found" });
  await show(front);
  expect(await readShownPhotos(await publishedCall(other.callId))).toEqual([]);
  const proved = await photoAccess(front);
  await database().listing.deleteMany({ where: { callId: made.callId } });
  expect(await database().photo.count({ where: photoScope(proved) })).toBe(0);
});
