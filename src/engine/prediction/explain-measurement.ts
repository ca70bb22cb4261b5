import { statedGauge, cmOfSize, type Count, type FlatTerm, type Measurement, type Size, type Term } from "../pattern";
import { lengthOfCount } from "../units";
import { measureTerm, targetCm } from "./measure";
import { growingFabric } from "./growth";
import { part, type PatternIndex } from "./pattern-index";
import { patternWorking } from "./working";

/** A count, a length or an allowance in a measurement. `cm` is its contribution, including `times`. */
export type ExplainedFlat =
  | {
      readonly kind: "count";
      readonly times: number;
      readonly label: string;
      readonly value: number;
      readonly direction: Count["direction"];
      readonly fabric: string;
      readonly perCm: number;
      readonly settles: number;
      readonly stretch: number;
      readonly cm: number;
    }
  | {
      readonly kind: "length" | "allowance";
      readonly times: number;
      readonly label: string;
      readonly eachCm: number;
      readonly cm: number;
    };

export type ExplainedTerm =
  | ExplainedFlat
  | {
      readonly kind: "diagonal";
      readonly times: number;
      readonly across: readonly ExplainedFlat[];
      readonly along: readonly ExplainedFlat[];
      readonly acrossCm: number;
      readonly alongCm: number;
      readonly eachCm: number;
      readonly cm: number;
    };

export interface Explanation {
  /** In the terms' order; `totalCm` is the sum so far. */
  readonly lines: readonly { readonly term: ExplainedTerm; readonly totalCm: number }[];
  readonly designCm: number;
  readonly targetCm: number | null;
}

/**
 * How a measurement of a size is calculated: each term with its numbers, and the running total.
 *
 * @param size a size of the index's pattern whose counts all have values.
 * @returns lengths in cm, unrounded; the last total is the design value.
 * @throws {RangeError} on a count without a value in that size.
 */
export function explainMeasurement(index: PatternIndex, measurement: Measurement, size: Size): Explanation {
  let totalCm = 0;
  const lines = measurement.terms.map((term) => {
    const explained = explainTerm(index, term, size);
    totalCm += explained.cm;
    return { term: explained, totalCm };
  });
  return { lines, designCm: totalCm, targetCm: targetCm(measurement, size) };
}

function explainTerm(index: PatternIndex, term: Term, size: Size): ExplainedTerm {
  if (!("diagonal" in term)) return explainFlat(index, term, size);
  const across = term.diagonal.across.map((flat) => explainFlat(index, flat, size));
  const along = term.diagonal.along.map((flat) => explainFlat(index, flat, size));
  const acrossCm = sumCm(across);
  const alongCm = sumCm(along);
  const { cm } = measureTerm(index, term, patternWorking(index, size.id));
  return {
    kind: "diagonal",
    times: term.times,
    across,
    along,
    acrossCm,
    alongCm,
    eachCm: Math.hypot(acrossCm, alongCm),
    cm,
  };
}

function explainFlat(index: PatternIndex, term: FlatTerm, size: Size): ExplainedFlat {
  if ("count" in term) return explainCount(index, term, size);
  const { times } = term;
  if ("length" in term) {
    const length = part(index.lengths, term.length);
    const growth = growingFabric(index, length) === null ? 1 : (length.growth ?? 1);
    const eachCm = cmOfSize(length.cm, size.id) * growth;
    return { kind: "length", times, label: length.label, eachCm, cm: times * eachCm };
  }
  const eachCm = cmOfSize(part(index.allowances, term.allowance), size.id);
  const label = labelOf(index.pattern.allowances, term.allowance);
  return { kind: "allowance", times, label, eachCm, cm: times * eachCm };
}

function explainCount(index: PatternIndex, term: Extract<FlatTerm, { count: string }>, size: Size): ExplainedFlat {
  const count = part(index.counts, term.count);
  const fabric = part(index.fabrics, count.fabric);
  const gauge = statedGauge(fabric);
  const isStitches = count.direction === "stitches";
  const side = isStitches ? "across" : "along";
  const perCm = isStitches ? gauge.stitchesPerCm : gauge.rowsPerCm;
  const value = patternWorking(index, size.id).countOf(count.id);
  const settles = fabric.settles?.[side] ?? 1;
  const stretch = term.stretched ? (fabric.wornStretch?.[side] ?? 1) : 1;
  const cm = term.times * lengthOfCount(value, perCm) * settles * stretch;
  const { label, direction } = count;
  return {
    kind: "count",
    times: term.times,
    label,
    value,
    direction,
    fabric: fabric.label,
    perCm,
    settles,
    stretch,
    cm,
  };
}

function sumCm(flats: readonly ExplainedFlat[]): number {
  return flats.reduce((sum, { cm }) => sum + cm, 0);
}

function labelOf(parts: readonly { readonly id: string; readonly label: string }[], id: string): string {
  return parts.find((named) => named.id === id)?.label ?? id;
}
