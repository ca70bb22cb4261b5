import { markSizeNumbers, type Segment } from "./mark-size-numbers";

/** A number of one size that is wrong in the text. */
export interface SizeChange {
  /** Index of the size, from 0. */
  readonly size: number;
  /** Id of the count that it is a number of. */
  readonly count: string;
  readonly was: number;
  readonly becomes: number;
}

/** Plain text in which a number is wrong, or a segment of the text, whose numbers may have a right one beside them. */
export type CorrectedSegment =
  | Exclude<Segment, { kind: "sizes" }>
  | { readonly kind: "change"; readonly text: string; readonly becomes: string }
  | (Omit<Extract<Segment, { kind: "sizes" }>, "parts"> & {
      readonly parts: readonly {
        readonly text: string;
        readonly size: number | null;
        /** The right number, where this one is wrong. */
        readonly becomes?: string;
      }[];
    });

/**
 * The numbers of a passage with what is right beside what is wrong.
 *
 * A number is wrong where it stands at its size in a list of all sizes and is the old one of a change of that size. Where
 * the passage has no such list, a number that stands alone counts as that of the wanted size.
 *
 * @param index index of the wanted size, from 0.
 * @param changes the earliest first: a later one of the same count may go on from an earlier one's new number.
 * @returns segments whose texts put together are the text.
 */
export function correctNumbers(
  text: string,
  { sizeCount, index }: { readonly sizeCount: number; readonly index: number },
  changes: readonly SizeChange[],
): CorrectedSegment[] {
  const segments = markSizeNumbers(text, sizeCount, index);
  const hasLists = segments.some(({ kind }) => kind === "sizes");
  return segments.flatMap((segment): CorrectedSegment[] => {
    if (segment.kind === "sizes") return [{ ...segment, parts: segment.parts.map((part) => corrected(part, changes)) }];
    return segment.kind === "text" && !hasLists ? plainChanges(segment.text, index, changes) : [segment];
  });
}

/** The text with the right numbers in place of the wrong ones; one that stands alone is read as that of the first size that changes. */
export function textWithChanges(text: string, sizeCount: number, changes: readonly SizeChange[]): string {
  const index = changes[0]?.size ?? 0;
  return correctNumbers(text, { sizeCount, index }, changes).map(newText).join("");
}

function newText(segment: CorrectedSegment): string {
  if (segment.kind === "change") return segment.becomes;
  if (segment.kind !== "sizes") return segment.text;
  return segment.parts.map(({ text, becomes }) => becomes ?? text).join("");
}

function corrected<Part extends { readonly text: string; readonly size: number | null }>(
  part: Part,
  changes: readonly SizeChange[],
): Part & { readonly becomes?: string } {
  const { text, size } = part;
  const becomes = size === null ? null : rightNumber(text, size, changes);
  return becomes === null ? part : { ...part, becomes };
}

function rightNumber(text: string, size: number, changes: readonly SizeChange[]): string | null {
  let number = text;
  let count: string | null = null;
  for (const change of changes) {
    // A new number of one count may be the old one of another.
    if (change.size !== size || String(change.was) !== number || (count !== null && count !== change.count)) continue;
    number = String(change.becomes);
    ({ count } = change);
  }
  return number === text ? null : number;
}

const ALONE = /(?<![\d.,/])\d+(?![.,/]?\d)/g;

function plainChanges(text: string, index: number, changes: readonly SizeChange[]): CorrectedSegment[] {
  const found: CorrectedSegment[] = [];
  let done = 0;
  for (const { 0: number, index: at } of text.matchAll(ALONE)) {
    const becomes = rightNumber(number, index, changes);
    if (becomes === null) continue;
    found.push({ kind: "text", text: text.slice(done, at) }, { kind: "change", text: number, becomes });
    done = at + number.length;
  }
  found.push({ kind: "text", text: text.slice(done) });
  return found.filter((segment) => segment.text !== "");
}
