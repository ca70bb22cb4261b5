import type { RowChoice } from "./measurement-choices";
import { namesPart } from "./part-names";

/** A row of whole numbers, by size; NaN where a cell is none. */
export interface CountedRow {
  readonly row: number;
  readonly direction: "stitches" | "rows";
  readonly label: string;
  readonly values: readonly number[];
}

/** Stitches and rows in one cm. */
export interface Gauge {
  readonly stitches: number;
  readonly rows: number;
}

interface Measured {
  readonly row: number;
  readonly label: string;
  readonly cm: readonly number[];
}

type Basis = Pick<RowChoice, "workedIn" | "countRow">;

const ALONG = /\bdepth\b|\bheight\b|\bdrop\b|\blength\b|\blong\b|\bto\b|\bfrom\b|\bside\b|\bunder ?arm\b|länge|tiefe/i;
const WORKED_TO_LENGTH = /\blength\b|\blong\b|\bside\b|\bseam\b|\bto\b|\bfrom\b|länge/i;
const ACROSS = /\bacross\b|\bwidth\b|\bwide\b|\bshoulders? to shoulders?\b|breite/i;
/** At most this often goes one count into a length: front and back, both halves of each. */
const MAX_TIMES = 4;
/** Edgings and ease take or add at most this share of a length; common practice, no source. */
const MAX_REST_SHARE = 0.12;
/** Of the sizes of a row this share must agree; the rest may be entry errors. */
const AGREEING_SHARE = 0.7;
/** Where words say nothing, sizes have to agree this well, as a share of the length. */
const TIGHT_SHARE = 0.03;
const MIN_WORDS = 0.5;

/**
 * Which count a finished length is worked in: one whose stitches or rows come to it at the gauge, in most sizes with the
 * same rest; among those the one with most words in common. Without a gauge words decide, where the count grows as the
 * length does. Where no count comes to it, a length is worked until it measures that: stitches are never guessed for one.
 */
export function guessBasis(measured: Measured, counts: readonly CountedRow[], gauge: Gauge | null): Basis {
  let best: CountedRow | null = null;
  let bestScore = 0;
  for (const count of counts) {
    const score = scoreOf(measured, count, gauge);
    if (score > bestScore) [best, bestScore] = [count, score];
  }
  return best === null ? withoutCount(measured.label) : { workedIn: best.direction, countRow: best.row };
}

function withoutCount(label: string): Basis {
  if (ACROSS.test(label)) return { workedIn: "stitches", countRow: null };
  if (WORKED_TO_LENGTH.test(label)) return { workedIn: "ruler", countRow: null };
  return { workedIn: ALONG.test(label) ? "rows" : "stitches", countRow: null };
}

function scoreOf({ row, label, cm }: Measured, count: CountedRow, gauge: Gauge | null): number {
  const isNamed = /\p{L}{2}/u.test(count.label.replace(/\b(?:st(?:itche)?s|rows|rounds|rnds)\b/gi, ""));
  const words = isNamed
    ? Math.max(namesPart(count.label, label), namesPart(label, count.label))
    : count.row === row + 1
      ? 1
      : 0;
  const fits = gauge === null ? proportional(cm, count.values) : agreement(cm, count, gauge);
  if (fits === "no") return 0;
  if (words < MIN_WORDS && (fits !== "tight" || gauge === null)) return 0;
  const isAlong = ALONG.test(label);
  const direction = (count.direction === "rows") === isAlong ? 0.2 : words < MIN_WORDS ? -1 : 0;
  return Math.max(0, words + direction + (fits === "tight" ? 0.3 : 0.1) - Math.abs(count.row - row) / 1_000);
}

type Fit = "tight" | "loose" | "no";

/** The rest of each size beside the count at the gauge: how alike the sizes are, and how small it is. */
function agreement(lengths: readonly number[], { values, direction }: CountedRow, perCm: Gauge): Fit {
  const pairs = lengths.flatMap((length, index) => {
    const once = (values[index] ?? Number.NaN) / perCm[direction];
    return Number.isFinite(length * once) && once > 0 ? [{ length, once }] : [];
  });
  if (pairs.length === 0) return "no";
  const times = Math.min(MAX_TIMES, Math.max(1, Math.round(median(pairs.map(({ length, once }) => length / once)))));
  const rests = pairs.map(({ length, once }) => (length - times * once) / length);
  const middle = median(rests);
  if (Math.abs(middle) > MAX_REST_SHARE) return "no";
  const within = (share: number) =>
    rests.filter((rest) => Math.abs(rest - middle) <= share).length >= rests.length * AGREEING_SHARE;
  if (pairs.length >= 3 && Math.abs(middle) <= 2 * TIGHT_SHARE && within(TIGHT_SHARE)) return "tight";
  return within(MAX_REST_SHARE) ? "loose" : "no";
}

/** Without a gauge: whether both grow alike over most sizes. */
function proportional(lengths: readonly number[], values: readonly number[]): Fit {
  const ratios = lengths.flatMap((length, index) => {
    const ratio = (values[index] ?? Number.NaN) / length;
    return Number.isFinite(ratio) && ratio > 0 ? [ratio] : [];
  });
  if (ratios.length === 0) return "no";
  const middle = median(ratios);
  const alike = ratios.filter((ratio) => Math.abs(ratio / middle - 1) <= MAX_REST_SHARE).length;
  return alike >= ratios.length * AGREEING_SHARE ? "loose" : "no";
}

function median(values: readonly number[]): number {
  return values.toSorted((left, right) => left - right)[Math.floor(values.length / 2)] ?? Number.NaN;
}
