import { readdirSync, statSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { crc32, deflateSync } from "node:zlib";
import sharp from "sharp";
import { expect, it } from "vitest";
import { callAccess } from "@/features/calls/access";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { readOwnPhotos } from "@/features/testing/photos/photo-data";
import { deleteOwnPhoto, noteTakenDown, storeConsent } from "@/features/testing/photos/photo-mutations";
import { openWithdrawals, readSheetPhotos } from "@/features/testing/photos/photo-sheet-data";
import { sweepOriginals } from "@/features/testing/photos/photo-work-mutations";
import { database } from "@/server/database";
import { readOriginal, readPicture } from "@/server/photo-store";
import { makeAccount } from "./make-account";
import { makeCall, makeTester } from "./make-tester";
import { jpeg, ownPhotoFolder, RED, sendPhoto, workOnPhotos } from "./photo-work";

const folder = ownPhotoFolder();

async function send(tester: TesterAccess, bytes: Uint8Array, photoId?: string) {
  return await sendPhoto({ tester }, bytes, photoId);
}

async function told(bytes: Uint8Array): Promise<string | null> {
  const tester = await makeTester(await makeCall());
  const { photoId } = await send(tester, bytes);
  await workOnPhotos();
  expect(await readOriginal(photoId)).toBeNull();
  return (await database().photo.findUniqueOrThrow({ where: { id: photoId } })).reason;
}

/** A square of one bit a pixel, made by hand because an encoder would need the memory that it must not cost. */
function blackPng(side: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const typed = Buffer.concat([Buffer.from(type), data]);
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(typed));
    return Buffer.concat([length, typed, sum]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  header[8] = 1;
  const rows = deflateSync(Buffer.alloc(side * (1 + Math.ceil(side / 8))));
  const signature = Buffer.from("\x89PNG\r\n\x1a\n", "latin1");
  return Buffer.concat([signature, chunk("IHDR", header), chunk("IDAT", rows), chunk("IEND", Buffer.alloc(0))]);
}

it("stores a photo upright, in three sizes, without place and maker, and deletes what was sent", async () => {
  const sent = await sharp({ create: { ...RED, width: 2400, height: 1200 } })
    .withExif({ IFD0: { Make: "Invented" }, IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1" } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  expect((await sharp(sent).metadata()).exif).toBeDefined();
  const called = await makeCall();
  const { photoId } = await send(await makeTester(called), sent);
  await workOnPhotos();
  for (const [name, height] of [
    ["320.webp", 320],
    ["320.jpg", 320],
    ["960.webp", 960],
    ["960.jpg", 960],
    ["1920.webp", 1920],
    ["1920.jpg", 1920],
  ] as const) {
    const stored = await readPicture(photoId, name);
    const seen = await sharp(stored ?? Buffer.alloc(0)).metadata();
    expect([seen.width, seen.height]).toEqual([height / 2, height]);
    expect([seen.exif, seen.iptc, seen.xmp, seen.orientation]).toEqual([undefined, undefined, undefined, undefined]);
  }
  expect(await readOriginal(photoId)).toBeNull();
  expect((await readSheetPhotos(called.call)).map((photo) => photo.photoId)).toEqual([photoId]);
  expect(statSync(join(folder, "photos", "pictures", photoId, "320.jpg")).mode & 0o777).toBe(0o600);
});

it("says why a file is no photo that it takes", async () => {
  expect(await told(Buffer.from("A recipe for soup"))).toMatch(/not a photo that can be read here/);
  expect(await told(Buffer.from("\0\0\0\x18ftypheic\0\0\0\0"))).toMatch(/HEIC/);
  expect(await told((await jpeg()).subarray(0, 500))).toMatch(/damaged|not sent whole/);
  expect(await told(await sharp({ create: RED }).gif().toBuffer())).toMatch(/GIF/);
  const frame = (value: number) => Buffer.alloc(400 * 200 * 3, value);
  const raw = { width: 400, height: 400, channels: 3, pageHeight: 200 } as const;
  const moving = sharp(Buffer.concat([frame(9), frame(200)]), { raw });
  expect(await told(await moving.webp({ loop: 0, delay: [100, 100] }).toBuffer())).toMatch(/animation/);
});

it("refuses a decompression bomb without unpacking it", async () => {
  const bomb = blackPng(20_000);
  expect(bomb.length).toBeLessThan(5_000_000);
  expect(await told(bomb)).toMatch(/400 megapixels \(20000 × 20000\)/);
});

it("takes nothing empty, nothing above 20 MB, nothing twice and not more than 24", async () => {
  const tester = await makeTester(await makeCall());
  expect((await send(tester, Buffer.alloc(0))).problem).toBe("empty");
  expect((await send(tester, Buffer.alloc(20_000_001))).problem).toBe("large");
  const bytes = await jpeg();
  const { photoId } = await send(tester, bytes);
  expect((await send(tester, bytes, photoId)).problem).toBeNull();
  expect((await readOwnPhotos(tester)).photos).toHaveLength(1);
  const answers = await Promise.all(Array.from({ length: 30 }, () => send(tester, bytes)));
  expect(answers.filter(({ problem }) => problem === "many")).toHaveLength(7);
  expect(readdirSync(join(folder, "photos", "originals"))).toHaveLength(24);
  await workOnPhotos();
  expect(readdirSync(join(folder, "photos", "originals"))).toEqual([]);
});

it("shows, changes and deletes nothing for another tester or another designer", async () => {
  const [called, elsewhere] = [await makeCall(), await makeCall()];
  const [owner, other] = [await makeTester(called), await makeTester(called)];
  const { photoId } = await send(owner, await jpeg());
  await workOnPhotos();
  await expect(send(other, await jpeg(), photoId)).rejects.toMatchObject({ code: "not-found" });
  await deleteOwnPhoto(other, photoId);
  expect((await readOwnPhotos(other)).photos).toEqual([]);
  expect(await readSheetPhotos(elsewhere.call)).toEqual([]);
  const { id, name, email } = await makeAccount();
  const stranger = { accountId: id, name, email, unit: "cm" } as const;
  await expect(callAccess(stranger, called.call.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  expect((await readOwnPhotos(owner)).photos).toHaveLength(1);
});

it("lets a tester withdraw what they allowed after the call is closed, and tells the designer once", async () => {
  const called = await makeCall();
  const tester = await makeTester(called);
  await send(tester, await jpeg());
  await workOnPhotos();
  await storeConsent(tester, ["pattern_page", "social_media"]);
  expect((await readSheetPhotos(called.call))[0]?.allowed).toEqual(["pattern_page", "social_media"]);
  await database().call.update({ where: { id: tester.callId }, data: { status: "closed", closedAt: new Date() } });
  expect((await send(tester, await jpeg())).problem).toBe("closed");
  await storeConsent(tester, ["pattern_page"]);
  await storeConsent(tester, ["pattern_page"]);
  expect((await readSheetPhotos(called.call))[0]?.allowed).toEqual(["pattern_page"]);
  const [withdrawal] = await openWithdrawals(called.call);
  expect(withdrawal).toMatchObject({ use: "social_media" });
  await noteTakenDown((await makeCall()).call, withdrawal?.withdrawalId ?? "");
  expect(await openWithdrawals(called.call)).toHaveLength(1);
  await noteTakenDown(called.call, withdrawal?.withdrawalId ?? "");
  expect(await openWithdrawals(called.call)).toEqual([]);
});

it("shows photos of a child to others only once their guardian agrees", async () => {
  const called = await makeCall();
  const tester = await makeTester(called);
  const { testerId } = tester;
  await database().tester.update({ where: { id: testerId }, data: { isWornByChild: true } });
  expect(await readOwnPhotos(tester)).toMatchObject({ isOfChild: true, allowed: [] });
  await expect(storeConsent(tester, ["pattern_page"])).rejects.toMatchObject({ code: "not-allowed" });
  expect((await readOwnPhotos(tester)).allowed).toEqual([]);
  await storeConsent(tester, ["pattern_page", "social_media"], { guardianAgrees: true });
  // Less than before needs nobody.
  await storeConsent(tester, ["pattern_page"]);
  expect((await readOwnPhotos(tester)).allowed).toEqual(["pattern_page"]);
  await expect(storeConsent(tester, ["pattern_page", "social_media"])).rejects.toMatchObject({ code: "not-allowed" });
});

it("deletes the files of a deleted photo, and of a person who deletes their data", async () => {
  const called = await makeCall();
  const tester = await makeTester(called);
  const [one, other] = [await send(tester, await jpeg()), await send(tester, await jpeg())];
  await storeConsent(tester, ["pattern_page"]);
  await workOnPhotos();
  await deleteOwnPhoto(tester, one.photoId);
  // Whoever had used it is asked to take it down.
  expect(await openWithdrawals(called.call)).toMatchObject([{ use: "pattern_page", view: "front" }]);
  await workOnPhotos();
  expect(await readPicture(one.photoId, "320.jpg")).toBeNull();
  expect(await readPicture(other.photoId, "320.jpg")).not.toBeNull();
  await forgetTester(tester);
  await workOnPhotos();
  expect(readdirSync(join(folder, "photos", "pictures"))).not.toContain(other.photoId);
  expect(await openWithdrawals(called.call)).toMatchObject([
    { name: null, use: "pattern_page", view: "front" },
    { name: null, use: "pattern_page", view: null },
  ]);
});

it("deletes what was sent an hour ago, whatever became of it, and then says that it is gone", async () => {
  const { photoId } = await send(await makeTester(await makeCall()), await jpeg());
  const before = new Date(Date.now() - 3_600_000);
  utimesSync(join(folder, "photos", "originals", photoId), before, before);
  await sweepOriginals();
  expect(await readOriginal(photoId)).toBeNull();
  await workOnPhotos();
  const { reason } = await database().photo.findUniqueOrThrow({ where: { id: photoId } });
  expect(reason).toBe("This photo was not stored whole. Send it again.");
});
