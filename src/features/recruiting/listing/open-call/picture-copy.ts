import { drawableText } from "@/server/picture-fonts";
import type { PublishedListing } from "../data";
import { lastDayWords, sizesWords } from "./open-call-copy";

const LONGEST_NAME = 90;

/** The words on the preview picture of a link to a call. */
export interface PictureWords {
  readonly heading: string;
  readonly line: string;
  readonly until: string;
}

/** Names appear only if our fonts can write them. */
export async function pictureWords(listing: PublishedListing): Promise<PictureWords> {
  const { pattern, designer } = listing;
  const [name, sizes, caller] = await Promise.all([pattern.name, sizesWords(pattern), designer].map(drawableText));
  const craft = pattern.craft === "crochet" ? "A crochet pattern" : "A knitting pattern";
  const inSizes = sizes === null ? `in ${pattern.sizes.length} sizes` : shortened(sizes ?? "", LONGEST_NAME);
  return {
    heading: name ? shortened(name, LONGEST_NAME) : craft,
    line: `${name ? `${craft} ` : ""}${inSizes}${caller ? `, by ${shortened(caller, LONGEST_NAME / 2)}` : ""}`,
    until: `Apply until ${lastDayWords(listing) ?? ""}`,
  };
}

function shortened(text: string, maxLength: number): string {
  const characters = Array.from(new Intl.Segmenter("en").segment(text), ({ segment }) => segment);
  return characters.length <= maxLength
    ? text
    : `${characters
        .slice(0, maxLength - 1)
        .join("")
        .trimEnd()}…`;
}
