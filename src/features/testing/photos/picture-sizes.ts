import sharp, { type OutputInfo } from "sharp";
import { PROBLEM_SENTENCES } from "./photo-copy";
import { MAX_PHOTO_PIXELS, PHOTO_SIZES } from "./photo-views";

/** A stored file of a photo. */
interface Picture {
  /** Such as `960.webp`. */
  readonly name: string;
  readonly bytes: Buffer;
}

export type PictureSizes =
  | { readonly status: "ready"; readonly width: number; readonly height: number; readonly pictures: readonly Picture[] }
  /** A sentence for whoever sent it. */
  | { readonly status: "failed"; readonly reason: string };

const WHITE = "#ffffff";
const DECODING_SECONDS = 60;
const OUR_FORMATS = "Send a JPEG, PNG or WebP.";

/**
 * A photo in every size that is stored, upright, as WebP and JPEG, without metadata. What it is, is told by its content alone.
 *
 * @param bytes as they were sent.
 */
export async function pictureSizes(bytes: Buffer): Promise<PictureSizes> {
  const reason = refusalByContent(bytes);
  if (reason !== null) return { status: "failed", reason };
  try {
    return await decoded(bytes);
  } catch {
    return {
      status: "failed",
      reason: "This photo is damaged or was not sent whole. Send it again, or take a new one.",
    };
  }
}

async function decoded(bytes: Buffer): Promise<PictureSizes> {
  const options = { failOn: "error", limitInputPixels: MAX_PHOTO_PIXELS } as const;
  const { width, height, pages = 1 } = await sharp(bytes, { limitInputPixels: false }).metadata();
  if (pages > 1) return { status: "failed", reason: MOVES };
  if (width * height > MAX_PHOTO_PIXELS) return { status: "failed", reason: tooManyPixels(width, height) };
  // Decoded once, as large as the largest size.
  const largest = await sharp(bytes, options)
    .timeout({ seconds: DECODING_SECONDS })
    .autoOrient()
    .resize({ ...within(PHOTO_SIZES[2]) })
    .toColourspace("srgb")
    .raw()
    .toBuffer({ resolveWithObject: true });
  const pictures = await Promise.all(PHOTO_SIZES.map((size) => inFormats(largest, size)));
  return { status: "ready", width: largest.info.width, height: largest.info.height, pictures: pictures.flat() };
}

async function inFormats({ data, info }: { data: Buffer; info: OutputInfo }, size: number): Promise<Picture[]> {
  const { width, height, channels } = info;
  const resized = () => sharp(data, { raw: { width, height, channels } }).resize(within(size));
  return [
    { name: `${size}.webp`, bytes: await resized().webp({ quality: 80 }).toBuffer() },
    { name: `${size}.jpg`, bytes: await resized().flatten({ background: WHITE }).jpeg({ quality: 82 }).toBuffer() },
  ];
}

function within(side: number) {
  return { width: side, height: side, fit: "inside", withoutEnlargement: true } as const;
}

const MOVES = "This is an animation. Send a still photo.";

function tooManyPixels(width: number, height: number): string {
  return `This photo has ${Math.round((width * height) / 1_000_000)} megapixels (${width} × ${height}); the limit is ${MAX_PHOTO_PIXELS / 1e6}. Send a smaller copy.`;
}

/** @returns a sentence where the first bytes are of nothing that is taken. */
function refusalByContent(bytes: Buffer): string | null {
  if (bytes.length === 0) return PROBLEM_SENTENCES.empty;
  const starts = (text: string, at = 0) => bytes.subarray(at, at + text.length).toString("latin1") === text;
  // The chunk of an animated PNG stands before its first picture.
  if (starts("\x89PNG\r\n\x1a\n")) return bytes.subarray(0, 4096).includes("acTL") ? MOVES : null;
  if (starts("\xff\xd8\xff") || (starts("RIFF") && starts("WEBP", 8))) return null;
  if (starts("GIF8")) return `This is a GIF. ${OUR_FORMATS}`;
  if (starts("ftyp", 4) && /^(hei|hev|mif|msf)/.test(bytes.subarray(8, 12).toString("latin1")))
    return `This photo is in HEIC format, which cannot be read here. ${OUR_FORMATS} On an iPhone, choose the photo from your library on this page, which makes a JPEG of it, or set Camera > Formats to “Most Compatible”.`;
  return `This file is not a photo that can be read here. ${OUR_FORMATS}`;
}
