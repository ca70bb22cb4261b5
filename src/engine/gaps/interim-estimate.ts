import { studentTChance, studentTQuantile, normalChance, normalQuantile } from "../distributions";
import type { Measurement, PatternDocument } from "../pattern";
import type { CountedReading } from "./counted-readings";
import type { Cell } from "./gaps-output";
import { verdictOf } from "./verdict";

/** The interval holds 90 %: its upper bound is this quantile. */
const UPPER = 0.95;
const MOST_TESTERS_TO_SETTLE = 9;

/** Scatter of one tester's gap about her cell's true gap, in tolerances. */
interface Spread {
  readonly sd: number;
  /** Infinite where the sd is the one expected by prediction. */
  readonly degreesOfFreedom: number;
}

/**
 * Every cell's gap by the plain mean of its testers, with the spread pooled over all cells in tolerances.
 *
 * Where no cell has two testers the spread expected of a reading (design 4.1) stands in for the pooled one.
 *
 * @param counted readings of the call, one entry a tester and measurement.
 * @returns cells through sizes, in each through measurements; nulls where a cell has no report.
 */
export function interimCells(pattern: PatternDocument, counted: readonly CountedReading[]): Cell[] {
  const gapsByCell = new Map<string, number[]>();
  for (const { tester, measurement, prediction, meanCm } of counted) {
    const key = cellKey(tester.size, measurement.id);
    const gap = (meanCm - prediction.predictedCm) / measurement.toleranceCm;
    gapsByCell.set(key, [...(gapsByCell.get(key) ?? []), gap]);
  }
  const spread = pooledSpread([...gapsByCell.values()]) ?? expectedSpread(counted);
  return pattern.sizes.flatMap((size) =>
    pattern.measurements.map((measurement) => {
      const gaps = gapsByCell.get(cellKey(size.id, measurement.id)) ?? [];
      return gaps.length === 0
        ? emptyCell(size.id, measurement.id)
        : estimatedCell(size.id, { measurement, gaps, spread });
    }),
  );
}

function cellKey(size: string, measurement: string): string {
  return `${size} ${measurement}`;
}

function pooledSpread(groups: readonly (readonly number[])[]): Spread | undefined {
  let sumOfSquares = 0;
  let degreesOfFreedom = 0;
  for (const group of groups) {
    const middle = mean(group);
    for (const gap of group) sumOfSquares += (gap - middle) ** 2;
    degreesOfFreedom += group.length - 1;
  }
  if (degreesOfFreedom === 0 || sumOfSquares === 0) return undefined;
  return { sd: Math.sqrt(sumOfSquares / degreesOfFreedom), degreesOfFreedom };
}

function expectedSpread(counted: readonly CountedReading[]): Spread {
  const variances = counted.map(({ prediction, measurement }) => (prediction.spreadCm / measurement.toleranceCm) ** 2);
  return { sd: Math.sqrt(mean(variances)), degreesOfFreedom: Number.POSITIVE_INFINITY };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function emptyCell(size: string, measurement: string): Cell {
  return {
    size,
    measurement,
    reports: 0,
    gapCm: null,
    standardErrorCm: null,
    lowCm: null,
    highCm: null,
    chanceOff: null,
    verdict: null,
    testersToSettle: null,
  };
}

function estimatedCell(
  size: string,
  { measurement, gaps, spread }: { measurement: Measurement; gaps: readonly number[]; spread: Spread },
): Cell {
  const tolerance = measurement.toleranceCm;
  const gap = mean(gaps);
  const standardError = spread.sd / Math.sqrt(gaps.length);
  const reach = quantile(UPPER, spread) * standardError;
  const chanceOff = chanceBeyondOne(gap, standardError, spread);
  const verdict = verdictOf({ gap, tolerance: 1, chanceOff });
  return {
    size,
    measurement: measurement.id,
    reports: gaps.length,
    gapCm: gap * tolerance,
    standardErrorCm: standardError * tolerance,
    lowCm: (gap - reach) * tolerance,
    highCm: (gap + reach) * tolerance,
    chanceOff,
    verdict,
    testersToSettle: verdict === "off" || verdict === "holds" ? null : testersToSettle(gap, gaps.length, spread),
  };
}

/** How many more testers of the size would settle the cell, if they came out as those so far. */
function testersToSettle(gap: number, reports: number, spread: Spread): number | null {
  for (let more = 1; more <= MOST_TESTERS_TO_SETTLE; more += 1) {
    const chanceOff = chanceBeyondOne(gap, spread.sd / Math.sqrt(reports + more), spread);
    const verdict = verdictOf({ gap, tolerance: 1, chanceOff });
    if (verdict === "off" || verdict === "holds") return more;
  }
  return null;
}

function chanceBeyondOne(gap: number, standardError: number, spread: Spread): number {
  return chance((-1 - gap) / standardError, spread) + chance((gap - 1) / standardError, spread);
}

function chance(value: number, { degreesOfFreedom }: Spread): number {
  return Number.isFinite(degreesOfFreedom) ? studentTChance(value, degreesOfFreedom) : normalChance(value);
}

function quantile(probability: number, { degreesOfFreedom }: Spread): number {
  return Number.isFinite(degreesOfFreedom)
    ? studentTQuantile(probability, degreesOfFreedom)
    : normalQuantile(probability);
}
