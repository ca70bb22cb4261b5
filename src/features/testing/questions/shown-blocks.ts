import { correctNumbers, readInstructions, type CorrectedSegment, type SizeChange } from "@/engine/instructions";
import { placeKey } from "./place-key";
import type { ShownBlock, ShownChange, ShownPiece } from "./shown-block";

/** The tester's size among all sizes. */
export interface OwnSize {
  readonly count: number;
  /** From 0. */
  readonly index: number;
}

/** Nothing is corrected. */
const NO_CHANGES: ReadonlyMap<string, readonly SizeChange[]> = new Map();

/**
 * The written instructions, block by block, with the numbers of one size marked.
 *
 * @param shown `all`: the others stay readable, as they will be published; `own`: they are left out.
 * @param changes numbers that corrections change, by the key of their block.
 */
export function shownBlocks(
  text: string,
  size: OwnSize,
  shown: "all" | "own" = "all",
  changes = NO_CHANGES,
): ShownBlock[] {
  const sizes = { sizeCount: size.count, index: size.index };
  return readInstructions(text).map(({ place, kind, lead, text: words }) => ({
    ...{ key: placeKey(place), kind, mark: shownMark(lead.trim()) },
    pieces:
      kind === "heading"
        ? [words]
        : correctNumbers(words, sizes, changes.get(placeKey(place)) ?? []).map((one) => piece(one, size.index, shown)),
  }));
}

function shownMark(mark: string): string {
  return mark === "*" || mark === "-" ? "•" : mark;
}

function piece(segment: CorrectedSegment, sizeIndex: number, shown: "all" | "own"): ShownPiece {
  switch (segment.kind) {
    case "text":
      return segment.text;
    case "change":
      return { was: segment.text, becomes: segment.becomes, own: true };
    case "unsure":
      return { unsure: segment.text };
    case "sizes":
      return { sizes: shownParts(segment.parts, sizeIndex, shown), ...(segment.isNone ? { none: true } : {}) };
  }
}

type SizePart = Extract<CorrectedSegment, { kind: "sizes" }>["parts"][number];

function shownParts(parts: readonly SizePart[], sizeIndex: number, shown: "all" | "own") {
  const own = parts.filter(({ size }) => size === sizeIndex);
  return joinedParts(shown === "own" && own.length > 0 ? own : parts, sizeIndex);
}

/** Joins the text between the reader's numbers: React marks the start of each text, which would outweigh most of them. */
function joinedParts(parts: readonly SizePart[], sizeIndex: number) {
  const joined: (string | readonly [own: string] | ShownChange)[] = [];
  for (const { text, size, becomes } of parts) {
    const last = joined.at(-1);
    if (becomes !== undefined) joined.push({ was: text, becomes, ...(size === sizeIndex ? { own: true } : {}) });
    else if (size === sizeIndex) joined.push([text]);
    else if (typeof last === "string") joined[joined.length - 1] = last + text;
    else joined.push(text);
  }
  return joined;
}
