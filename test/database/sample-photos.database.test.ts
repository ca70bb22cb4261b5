import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { patternAccess } from "@/features/patterns/access";
import { publishedCall } from "@/features/recruiting/listing/access";
import { photoAccess } from "@/features/testing/photos/photo-access";
import { photoFile } from "@/features/testing/photos/photo-data";
import { isSamplePreparing } from "@/features/testing/photos/preparing-data";
import {
  readMainPhotos,
  readMainPicture,
  readOwnSample,
  readPublicSample,
} from "@/features/testing/photos/sample-data";
import { deleteFromSample, storeDescription, storeMain } from "@/features/testing/photos/sample-mutations";
import { database } from "@/server/database";
import { readPicture } from "@/server/photo-store";
import { jpeg, ownPhotoFolder, sendPhoto, workOnPhotos } from "./photo-work";
import { joinCall, makePublishedCall } from "./published-call";

const folder = ownPhotoFolder();

async function madeSample(photos: number) {
  const made = await makePublishedCall();
  const pattern = made.access.pattern;
  const ids: string[] = [];
  for (let index = 0; index < photos; index += 1) ids.push((await sendPhoto({ pattern }, await jpeg())).photoId);
  return { ...made, pattern, ids, published: await publishedCall(made.callId) };
}

it("shows the first photo of a sample as the main one until another is chosen, and again once that is deleted", async () => {
  const { pattern, ids, published, owner, patternId } = await madeSample(3);
  expect(await isSamplePreparing(pattern)).toBe(true);
  await workOnPhotos();
  expect(await isSamplePreparing(pattern)).toBe(false);
  const inOrder = async () => (await readPublicSample(published)).map(({ photoId }) => photoId);
  const [first = "", second = "", third = ""] = ids;
  expect(await inOrder()).toEqual([first, second, third]);
  await storeMain(pattern, third, new Date());
  expect(await inOrder()).toEqual([third, first, second]);
  expect((await readMainPhotos(owner)).get(patternId)?.photoId).toBe(third);
  expect(await readMainPicture(published)).toEqual(await readPicture(third, "960.jpg"));
  await deleteFromSample(pattern, third);
  expect(await inOrder()).toEqual([first, second]);
  await workOnPhotos();
  expect(readdirSync(join(folder, "photos", "pictures"))).not.toContain(third);
});

it("shows a sample's photo to everybody only while a call of its pattern is published", async () => {
  const { ids, callId } = await madeSample(1);
  const [id = ""] = ids;
  const whileReceived = await photoAccess(id);
  expect(await photoFile(whileReceived, { size: 960, format: "webp" })).toBeNull();
  await workOnPhotos();
  const access = await photoAccess(id);
  expect(access.isPublic).toBe(true);
  expect(await photoFile(access, { size: 960, format: "webp" })).not.toBeNull();
  await database().listing.delete({ where: { callId } });
  // Proved before the call was taken back.
  expect(await photoFile(access, { size: 960, format: "webp" })).toBeNull();
});

it("lets only editors of the pattern send, describe, choose and delete", async () => {
  const made = await madeSample(1);
  const [id = ""] = made.ids;
  const { viewer } = await joinCall(made, "viewer");
  await expect(patternAccess(viewer, made.patternId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
  const watching = await patternAccess(viewer, made.patternId, "viewer");
  const elsewhere = (await makePublishedCall()).access.pattern;
  const bytes = await jpeg();
  for (const pattern of [watching, elsewhere]) {
    await expect(storeDescription(pattern, id, "Mine now")).rejects.toMatchObject({ code: "not-found" });
    await expect(storeMain(pattern, id, new Date())).rejects.toMatchObject({ code: "not-found" });
    await deleteFromSample(pattern, id);
  }
  await expect(sendPhoto({ pattern: watching }, bytes)).rejects.toMatchObject({ code: "not-found" });
  await expect(sendPhoto({ pattern: elsewhere }, bytes, id)).rejects.toMatchObject({ code: "not-found" });
  await storeDescription(made.pattern, id, "A red tee on a hanger");
  expect(await readOwnSample(watching)).toMatchObject([{ photoId: id, note: "A red tee on a hanger" }]);
});

it("belongs to a tester or a pattern, never to both or to nobody", async () => {
  const { ids } = await madeSample(1);
  const [id = ""] = ids;
  const nobody = database().photo.update({ where: { id }, data: { patternId: null } });
  await expect(nobody).rejects.toThrow(/photo_belongs_to_one/);
});
