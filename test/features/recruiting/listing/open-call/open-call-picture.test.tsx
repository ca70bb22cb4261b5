import { ImageResponse } from "next/og";
import sharp from "sharp";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import type { PublishedListing } from "../../../../../src/features/recruiting/listing/data";
import { OpenCallPicture } from "../../../../../src/features/recruiting/listing/open-call/open-call-picture";
import { pictureWords } from "../../../../../src/features/recruiting/listing/open-call/picture-copy";
import { asJpeg } from "../../../../../src/server/as-jpeg";
import { drawableText, pictureFonts } from "../../../../../src/server/picture-fonts";
import { patternDocument } from "../../../../factories/pattern";

const TIME_ZONE = "Europe/Lisbon";

function listing(name: string, designer = "Invented Designer"): PublishedListing {
  const day = { day: "2027-03-14", at: new Date("2027-03-15T00:00:00Z") };
  const days = { applyUntil: "2027-03-14", startOn: "2027-03-20", swatchBy: "2027-04-01", reportBy: "2027-06-01" };
  return {
    ...{ callId: "", title: "A call", designer, isDemo: false, places: {}, pieces: null, taking: "open", version: 1 },
    ...{ pattern: patternDocument({ name }), tested: patternDocument({ name }) },
    publishedAt: new Date(0),
    agreement: { version: 1, text: "" },
    sharing: { progressPhotos: null, finishedPhotos: null },
    dates: { applyUntil: day, startOn: day, swatchBy: day, reportBy: day },
    document: {
      ...{ introduction: "", timeZone: TIME_ZONE, dates: days, asks: "", yarn: "", tools: "", gives: "" },
      ...{ bodyAsked: ["bust"], fitBy: ["bust"], mostApplications: null },
    },
  };
}

const asked: string[] = [];

beforeEach(() => {
  asked.length = 0;
  // Only the outside network is taken away: a picture that needs it would be asked for here.
  const own = globalThis.fetch;
  vi.stubGlobal("fetch", (address: string) => {
    if (address.startsWith("data:")) return own(address);
    asked.push(address);
    return Promise.reject(new Error("no internet"));
  });
});

afterEach(() => vi.unstubAllGlobals());

async function drawn(name: string, photo: Buffer | null = null): Promise<Buffer> {
  const [words, fonts] = await Promise.all([pictureWords(listing(name)), pictureFonts()]);
  const response = new ImageResponse(<OpenCallPicture {...{ words, photo }} />, { width: 1200, height: 630, fonts });
  return Buffer.from(await response.arrayBuffer());
}

it.each([
  ["a plain name", "Saltmarsh Tee"],
  ["accents, Greek and Cyrillic", "Ångström Čapek Ελλάδα Весна Việt"],
  ["300 characters without a space", "x".repeat(300)],
  ["right-to-left letters", "شال البحر"],
  ["emoji, flags, keycaps and signs taken for emoji", "Tee 🧶👩🏽‍🦱🏳️‍🌈🇵🇹 1️⃣ © ™"],
  ["letters of no script of ours", "編み物"],
  ["nothing at all", ""],
])("draws %s without asking the internet for anything", { timeout: 30_000 }, async (_kind, name) => {
  const picture = await drawn(name);
  // PNG's signature, then width and height as the header chunk has them (ISO/IEC 15948).
  expect(picture.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([1200, 630]);
  expect(asked).toEqual([]);
});

it("draws the designer’s photo beside the words, as a JPEG that is small enough to be shown", async () => {
  const background = { r: 200, g: 0, b: 0 };
  const photo = await sharp({ create: { width: 720, height: 960, channels: 3, background } })
    .jpeg()
    .toBuffer();
  const picture = await asJpeg(new Uint8Array(await drawn("Saltmarsh Tee", photo)).buffer);
  expect(picture.length).toBeLessThan(300_000);
  const right = await sharp(picture).extract({ left: 900, top: 300, width: 1, height: 1 }).raw().toBuffer();
  expect([...right]).toEqual([200, 0, 0]);
  expect(asked).toEqual([]);
});

it("leaves out characters that cannot be drawn, and names that consist of them", async () => {
  expect(await drawableText("Tee 🧶 by Ana ❤️ © 2027")).toBe("Tee by Ana 2027");
  expect(await drawableText("Čapek’s Ελλάδα – 12½ in")).toBe("Čapek’s Ελλάδα – 12½ in");
  expect(await drawableText("שלום Tee")).toBeNull();
  expect(await pictureWords(listing("שלום", "מעצבת"))).toEqual({
    heading: "A crochet pattern",
    line: "in 2 sizes, S to L",
    until: "Apply until Sunday 14 March 2027",
  });
});

it("shortens a long name by whole characters", async () => {
  const { heading } = await pictureWords(listing("é".repeat(300)));
  expect(heading).toBe(`${"é".repeat(89)}…`);
});
