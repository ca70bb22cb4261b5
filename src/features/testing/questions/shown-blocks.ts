import { markSizeNumbers, readInstructions, type Segment } from "@/engine/instructions";
import { placeKey } from "./place-key";
import type { ShownBlock, ShownPiece } from "./shown-block";

/** The tester's size among all sizes. */
export interface OwnSize {
  readonly count: number;
  /** From 0. */
  readonly index: number;
}

/**
 * The written instructions, block by block, with the numbers of one size marked.
 *
 * @param shown `all`: the others stay readable, as they will be published; `own`: they are left out.
 */
export function shownBlocks(text: string, size: OwnSize, shown: "all" | "own" = "all"): ShownBlock[] {
  return readInstructions(text).map(({ place, kind, lead, text: words }) => ({
    ...{ key: placeKey(place), kind, mark: shownMark(lead.trim()) },
    pieces:
      kind === "heading"
        ? [words]
        : markSizeNumbers(words, size.count, size.index).map((one) => piece(one, size.index, shown)),
  }));
}

function shownMark(mark: string): string {
  return mark === "*" || mark === "-" ? "•" : mark;
}

function piece(segment: Segment, sizeIndex: number, shown: "all" | "own"): ShownPiece {
  switch (segment.kind) {
    case "text":
      return segment.text;
    case "unsure":
      return { unsure: segment.text };
    case "sizes":
      return { sizes: shownParts(segment.parts, sizeIndex, shown), ...(segment.isNone ? { none: true } : {}) };
  }
}

type SizePart = Extract<Segment, { kind: "sizes" }>["parts"][number];

function shownParts(parts: readonly SizePart[], sizeIndex: number, shown: "all" | "own") {
  const own = parts.filter(({ size }) => size === sizeIndex);
  return joinedParts(shown === "own" && own.length > 0 ? own : parts, sizeIndex);
}

/** Joins the text between the reader's numbers: React marks the start of each text, which would outweigh most of them. */
function joinedParts(parts: readonly SizePart[], sizeIndex: number): readonly (string | readonly [own: string])[] {
  const joined: (string | [string])[] = [];
  for (const { text, size } of parts) {
    const last = joined.at(-1);
    if (size === sizeIndex) joined.push([text]);
    else if (typeof last === "string") joined[joined.length - 1] = last + text;
    else joined.push(text);
  }
  return joined;
}
