import { markSizeNumbers, readInstructions, type Segment } from "@/engine/instructions";
import { placeKey } from "./place-key";
import type { ShownBlock, ShownPiece } from "./shown-block";

/** Which of how many sizes is hers. */
export interface OwnSize {
  readonly count: number;
  /** From 0. */
  readonly at: number;
}

/** The written instructions, block by block, with the numbers of one size marked; the others stay, and can be read. */
export function shownBlocks(text: string, size: OwnSize): ShownBlock[] {
  return readInstructions(text).map(({ place, kind, lead, text: words }) => ({
    ...{ key: placeKey(place), kind, mark: shownMark(lead.trim()) },
    pieces:
      kind === "heading" ? [words] : markSizeNumbers(words, size.count, size.at).map((one) => piece(one, size.at)),
  }));
}

function shownMark(mark: string): string {
  return mark === "*" || mark === "-" ? "•" : mark;
}

function piece(segment: Segment, at: number): ShownPiece {
  switch (segment.kind) {
    case "text":
      return segment.text;
    case "unsure":
      return { unsure: segment.text };
    case "sizes":
      return { sizes: joinedParts(segment.parts, at), ...(segment.isNone ? { none: true } : {}) };
  }
}

type SizePart = Extract<Segment, { kind: "sizes" }>["parts"][number];

/** What stands between the reader's numbers as one text: React marks where each text begins, which weighs more than most. */
function joinedParts(parts: readonly SizePart[], at: number): readonly (string | readonly [own: string])[] {
  const joined: (string | [string])[] = [];
  for (const { text, size } of parts) {
    const last = joined.at(-1);
    if (size === at) joined.push([text]);
    else if (typeof last === "string") joined[joined.length - 1] = last + text;
    else joined.push(text);
  }
  return joined;
}
