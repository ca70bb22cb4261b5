import { MAX_SIZES } from "../pattern";
import { parseLength, type LengthUnit } from "../units";

/** A size as its designer lists it: a name, and one body measurement. */
export interface ListedSize {
  readonly label: string;
  readonly cm: number;
}

export type SizeList =
  | { readonly ok: true; readonly sizes: readonly ListedSize[] }
  | { readonly ok: false; readonly faults: readonly string[] };

const NUMBER = String.raw`(?:\d+[ -])?\d+\/\d+|\d+(?:[.,]\d+)?\s*[½¼¾⅛⅜⅝⅞⅓⅔]?`;
const NAME_AND_BODY = new RegExp(
  String.raw`^(.+?)[\s,;:=]+((?:\d+(?:[.,]\d+)?\s*[–—-]\s*)?(?:${NUMBER})(?:\s*(?:cm|mm|in|inch|inches|″|"|”))?\.?)$`,
  "i",
);
const RANGE = /^(\d+(?:[.,]\d+)?)\s*[–—-]\s*(\d+(?:[.,]\d+)?)\s*(\D*)$/;

const MAX_CM = 1_000;

/**
 * Sizes that a person lists, one a line: a name, then its body measurement. Two rows from a spreadsheet, names above
 * their bodies, are understood too.
 *
 * @param text as typed or pasted, such as `M 94`, `M, 37 1/2 in` or `M<tab>92–96`; of a range the middle is taken.
 * @param unit unit of a number without one.
 * @returns the sizes, smallest body first, or a sentence for each thing that is wrong.
 */
export function readSizeList(text: string, unit: LengthUnit): SizeList {
  const lines = turned(text.split(/\r?\n/).filter((line) => line.trim() !== ""));
  if (lines.length === 0) return { ok: false, faults: ["Write your sizes, one a line: a name, then its body."] };
  const read = lines.map((line) => readLine(line, unit));
  const sizes = read.flatMap((one) => (one.ok ? [one.size] : []));
  const faults = [...read.flatMap((one) => (one.ok ? [] : [one.message])), ...listFaults(sizes)];
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, sizes: sizes.toSorted((left, right) => left.cm - right.cm) };
}

/** Two rows of as many cells each become a line a size. */
function turned(lines: readonly string[]): readonly string[] {
  const [names = "", bodies = ""] = lines;
  const [above, below] = [names.split("\t"), bodies.split("\t")];
  const isTwoRows = lines.length === 2 && above.length > 2 && above.length === below.length;
  return isTwoRows ? above.map((name, index) => `${name}\t${below[index] ?? ""}`) : lines;
}

type ReadLine = { readonly ok: true; readonly size: ListedSize } | { readonly ok: false; readonly message: string };

function readLine(line: string, unit: LengthUnit): ReadLine {
  const parts = splitLine(line.trim());
  const example = unit === "in" ? "M 37 1/2" : "M 94";
  if (parts === null) {
    return { ok: false, message: `“${shorten(line)}” is not a name and a body. Write it like ${example}.` };
  }
  const { label, body } = parts;
  const length = readBody(body, unit);
  if (!length.ok) return { ok: false, message: `“${shorten(label)}”: ${length.message}` };
  if (length.cm <= 0 || length.cm > MAX_CM) {
    return { ok: false, message: `“${shorten(label)}”: “${body}” cannot be a body measurement.` };
  }
  return { ok: true, size: { label, cm: length.cm } };
}

function splitLine(line: string): { readonly label: string; readonly body: string } | null {
  if (parseLength(line, "cm").ok) return null;
  const cells = line.split("\t").map((cell) => cell.trim());
  const [first = "", ...rest] = cells;
  const last = rest.findLast((cell) => cell !== "");
  if (last !== undefined) return first === "" ? null : { label: first, body: last };
  const [, label, body] = NAME_AND_BODY.exec(line) ?? [];
  return label === undefined || body === undefined ? null : { label, body: body.trim() };
}

type Length = { readonly ok: true; readonly cm: number } | { readonly ok: false; readonly message: string };

function readBody(body: string, unit: LengthUnit): Length {
  const [, low, high, written = ""] = RANGE.exec(body) ?? [];
  if (low === undefined || high === undefined) return parseLength(body, unit);
  const from = parseLength(low + written, unit);
  const to = parseLength(high + written, unit);
  if (!from.ok) return from;
  return to.ok ? { ok: true, cm: (from.cm + to.cm) / 2 } : to;
}

function listFaults(sizes: readonly ListedSize[]): string[] {
  const faults: string[] = [];
  const twice = sizes.find(({ label }, index) => sizes.findIndex((other) => other.label === label) < index);
  if (twice !== undefined) faults.push(`“${shorten(twice.label)}” stands twice. Give each size a name of its own.`);
  const alike = sizes.find(({ cm }, index) => sizes.findIndex((other) => other.cm === cm) < index);
  const other = sizes.find((size) => size !== alike && size.cm === alike?.cm);
  if (alike !== undefined && other !== undefined && twice === undefined) {
    faults.push(
      `“${shorten(other.label)}” and “${shorten(alike.label)}” are for the same body. Change one, or leave one out.`,
    );
  }
  if (sizes.length > MAX_SIZES) faults.push(`These are ${sizes.length} sizes. A pattern holds at most ${MAX_SIZES}.`);
  return faults;
}

function shorten(text: string): string {
  const trimmed = text.trim();
  return trimmed.length > 40 ? `${trimmed.slice(0, 39)}…` : trimmed;
}
