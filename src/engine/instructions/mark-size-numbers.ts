/** A part of a number list: a number of one size, or the text between two. */
interface ListPart {
  readonly text: string;
  /** Index of the number's size; null for text between numbers. */
  readonly size: number | null;
}

/** Text, a list with one number a size, or a list with another count of numbers than there are sizes. */
export type Segment =
  | { readonly kind: "text"; readonly text: string }
  | {
      readonly kind: "sizes";
      readonly text: string;
      readonly parts: readonly ListPart[];
      /** The number of the wanted size, as written. */
      readonly own: string;
      /** True if the size has none: a dash or 0. */
      readonly isNone: boolean;
    }
  | { readonly kind: "unsure"; readonly text: string; readonly numbers: number };

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?(?: ?[½¼¾⅛⅜⅝⅞⅓⅔]|[ -]\d{1,2}\/\d{1,2}|\/\d{1,2})?|[½¼¾⅛⅜⅝⅞⅓⅔]|[-–—])`;
const UNIT = String.raw`(?:\s?(?:cm|mm|in|inch|inches|"|″|”)(?![\p{L}\d]))?`;
const LIST = new RegExp(String.raw`(?<![\d.,\/–—-])${NUMBER}${UNIT}(?:\s*[([][^()[\]]{1,600}[)\]]){1,24}`, "gu");
const GROUP = /[([]([^()[\]]*)[)\]]/g;
const ITEM = new RegExp(`^${NUMBER}(${UNIT})$`, "u");
const BY_SPACES = /(\s*[,:;]\s*|\s+)/;
const FRACTION = /\d (?:\d{1,2}\/\d|[½¼¾⅛⅜⅝⅞⅓⅔])/;
/** A comma with a space behind it, or any comma: `80,5 (84,5, 88,5)` and `80 (84,88,92)`. */
const SEPARATORS = [/(\s*[:;]\s*|\s*,\s+)/, /(\s*[,:;]\s*)/, BY_SPACES] as const;
/** Two numbers, as in `4 (6)`, are too common to be reported as a list of the wrong length. */
const MIN_UNSURE = 3;

/**
 * Finds the numbers for all sizes in a text, in the usual notation: `176 (192, 212, 232)`, with colons, in square brackets
 * or in several brackets, with decimals, fractions and units, a dash or 0 if a size has none.
 *
 * @param sizeCount how many sizes the pattern has.
 * @param index index of the wanted size, from 0.
 * @returns segments whose texts, and in lists whose parts' texts, put together are the text. A list of as many numbers as
 *   there are sizes is `sizes`; one of another count is `unsure`, for it may mean something else.
 * @throws {RangeError} where there is no such size.
 */
export function markSizeNumbers(text: string, sizeCount: number, index: number): Segment[] {
  if (!Number.isInteger(index) || index < 0 || index >= sizeCount)
    throw new RangeError(`no size ${index} of ${sizeCount}`);
  const segments: Segment[] = [];
  let done = 0;
  const add = (segment: Segment) => {
    if (segment.text !== "") segments.push(segment);
  };
  for (const match of text.matchAll(LIST)) {
    const found = sizeCount < 2 ? undefined : listIn(match[0], { sizeCount, index });
    if (found === undefined) continue;
    add({ kind: "text", text: text.slice(done, match.index) });
    add(found);
    done = match.index + found.text.length;
  }
  add({ kind: "text", text: text.slice(done) });
  return segments;
}

interface SizePosition {
  readonly sizeCount: number;
  readonly index: number;
}

/** The list at the start of a text: with as many of its brackets as make a list of the right length. */
function listIn(text: string, { sizeCount, index }: SizePosition): Exclude<Segment, { kind: "text" }> | undefined {
  const ends = [...text.matchAll(GROUP)].map((group) => group.index + group[0].length).toReversed();
  let unsure: Extract<Segment, { kind: "unsure" }> | undefined;
  for (const end of ends) {
    const list = text.slice(0, end);
    for (const separator of SEPARATORS) {
      const parts = partsOf(list, separator);
      const items = parts?.filter(({ size }) => size !== null) ?? [];
      const own = items[index]?.text;
      if (parts && items.length === sizeCount && own !== undefined)
        return { kind: "sizes", text: list, parts, own, isNone: /^(?:[-–—]|0)$/.test(own) };
      if (items.length >= MIN_UNSURE) unsure ??= { kind: "unsure", text: list, numbers: items.length };
    }
  }
  return unsure;
}

/** The parts of a list; undefined if something in it is not a number, or if its units differ, as in `10 cm (4 in)`. */
function partsOf(list: string, separator: RegExp): ListPart[] | undefined {
  const parts: ListPart[] = [];
  let size = 0;
  const units = new Set<string>();
  const [first = "", ...runs] = list.split(/(\s*[([]\s*|\s*[)\]])/);
  for (const piece of [first, ...runs.flatMap((run) => piecesOf(run, separator))]) {
    const item = ITEM.exec(piece);
    if (item === null) {
      if (!/^[\s()[\],:;]*$/.test(piece)) return undefined;
      parts.push({ text: piece, size: null });
      continue;
    }
    const unit = (item[1] ?? "").trim();
    if (unit !== "") units.add(unit);
    parts.push({ text: piece, size });
    size += 1;
  }
  return units.size > 1 ? undefined : parts;
}

function piecesOf(run: string, separator: RegExp): string[] {
  // A space separates numbers only if it does not separate a whole number from its fraction.
  if (separator === BY_SPACES && FRACTION.test(run)) return [run];
  return run.split(separator).filter((piece) => piece !== "");
}
