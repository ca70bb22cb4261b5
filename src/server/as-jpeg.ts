import "server-only";
import sharp from "sharp";

/** A drawn picture as JPEG: with a photo in it, a PNG is larger than those who show previews of links accept. */
export async function asJpeg(png: ArrayBuffer): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await sharp(png).jpeg({ quality: 88, chromaSubsampling: "4:4:4" }).toBuffer());
}
