import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { ownRecord } from "@/features/testing/home/own-record-data";
import { readOwnPhotos } from "@/features/testing/photos/photo-data";
import { deleteOwnPhoto } from "@/features/testing/photos/photo-mutations";
import { readSheetPhotos } from "@/features/testing/photos/photo-sheet-data";
import { readProblemPhotos } from "@/features/testing/photos/problem-photo-data";
import { placeNotes } from "@/features/testing/questions/data";
import { reportTrouble, takeBackTrouble } from "@/features/testing/questions/mutations";
import { database } from "@/server/database";
import { readPicture } from "@/server/photo-store";
import { makeCall, makeTester, type TestedCall } from "./make-tester";
import { jpeg, ownPhotoFolder, sendPhoto, workOnPhotos } from "./photo-work";

ownPhotoFolder();

let called: TestedCall;
let ann: TesterAccess;

beforeEach(async () => {
  called = await makeCall();
  ann = await makeTester(called);
});

async function trouble(tester: TesterAccess, happened = "The underarm gapes"): Promise<string> {
  const place = { block: 0, hash: "a1b2", words: "Cast on." };
  const at = { revisionId: called.revisionId, place, idempotencyKey: randomUUID() };
  await reportTrouble(tester, { ...at, happened, did: "" });
  const { troubles } = await placeNotes(tester);
  return troubles.at(-1)?.troubleId ?? "";
}

async function send(troubleId: string, view: "problem" | "front" = "problem"): Promise<string> {
  const { photoId, problem } = await sendPhoto({ tester: ann }, await jpeg(), randomUUID(), { view, troubleId });
  expect(problem).toBeNull();
  return photoId;
}

const stored = async (id: string) => (await database().photo.findUniqueOrThrow({ where: { id } })).troubleId;

it("stands at the trouble spot that it shows, in all places where its tester and the designer see it", async () => {
  await trouble(ann, "Another");
  const troubleId = await trouble(ann);
  const photoId = await send(troubleId);
  await workOnPhotos();
  const { troubles } = await placeNotes(ann);
  expect(troubles.map(({ photos }) => photos.map((photo) => photo.photoId))).toEqual([[], [photoId]]);
  expect((await readOwnPhotos(ann)).photos).toMatchObject([{ view: "problem", note: "The underarm gapes" }]);
  expect(await readProblemPhotos(called.call, [ann.testerId])).toMatchObject([{ photoId, troubleId }]);
  expect(await readSheetPhotos(called.call)).toMatchObject([{ photoId, note: "The underarm gapes" }]);
  expect((await ownRecord(ann)).photos).toMatchObject([{ trouble: { happened: "The underarm gapes" } }]);
});

it("is stored without one where the trouble spot is another tester’s, or gone, or it shows no problem", async () => {
  const others = await trouble(await makeTester(called));
  const own = await trouble(ann);
  expect(await stored(await send(others))).toBeNull();
  expect(await stored(await send(randomUUID()))).toBeNull();
  expect(await stored(await send(own, "front"))).toBeNull();
  expect(await stored(await send(own))).toBe(own);
});

it("outlives its trouble spot, and goes when it is deleted or its tester deletes their data", async () => {
  const troubleId = await trouble(ann);
  const [kept, deleted] = [await send(troubleId), await send(troubleId)];
  await workOnPhotos();
  await deleteOwnPhoto(ann, deleted);
  await takeBackTrouble(ann, troubleId);
  expect((await readOwnPhotos(ann)).photos).toMatchObject([{ photoId: kept, view: "problem", note: "" }]);
  expect(await readProblemPhotos(called.call, [ann.testerId])).toMatchObject([{ photoId: kept, troubleId: null }]);
  const again = await send(await trouble(ann));
  await workOnPhotos();
  await forgetTester(ann);
  await workOnPhotos();
  expect(await database().photo.count({ where: { id: { in: [kept, deleted, again] } } })).toBe(0);
  for (const id of [kept, deleted, again]) expect(await readPicture(id, "320.jpg")).toBeNull();
});
