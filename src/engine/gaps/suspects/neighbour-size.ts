import type { Tester } from "../../pattern";
import { measure, patternWorking, workedAtOwnGauge, type PatternIndex } from "../../prediction";
import type { Suspect } from "../gaps-output";
import { expectationOf, scoredReadings, scoreOf, type ScoredReading } from "./reading-scores";

const LEAST_READINGS = 3;
/** By how much the sum of squared scores must fall, and what is left a reading, for a neighbour's numbers to be told. */
const LEAST_FALL = 16;
const MOST_LEFT = 1;

/**
 * A tester all of whose readings fit the numbers of the size next to hers better than her own: told, never set aside.
 *
 * @param tester with the swatches and readings that do not count set aside.
 * @returns the reading furthest from her size's number, with what the neighbour's would be.
 * @see docs/method.md#outliers.
 */
export function neighbourSizeSuspect(index: PatternIndex, tester: Tester): Suspect | undefined {
  const scored = scoredReadings(index, tester).filter(({ at }) => tester.readings[at]?.decision !== "set-aside");
  if (scored.length < LEAST_READINGS) return undefined;
  const own = sumOfSquares(scored);
  if (own <= LEAST_FALL) return undefined;
  const at = index.pattern.sizes.findIndex(({ id }) => id === tester.size);
  const neighbours = [index.pattern.sizes[at - 1], index.pattern.sizes[at + 1]].flatMap((size) => {
    if (size === undefined) return [];
    const other = scored.map((reading) => inSize(index, { tester, reading, size: size.id }));
    const sum = sumOfSquares(other);
    return own - sum > LEAST_FALL && sum <= MOST_LEFT * scored.length ? [{ other, sum }] : [];
  });
  const [best] = neighbours.toSorted((left, right) => left.sum - right.sum);
  const [furthest] = scored.toSorted((left, right) => Math.abs(score(right)) - Math.abs(score(left)));
  const wouldBe = best?.other.find((reading) => reading.at === furthest?.at)?.expectation.cm;
  if (furthest === undefined || wouldBe === undefined) return undefined;
  return {
    tester: tester.id,
    what: "reading",
    id: furthest.measurement,
    value: furthest.cm,
    slip: "neighbour-size",
    wouldBe,
    setAside: false,
  };
}

function score({ cm, expectation }: ScoredReading): number {
  return scoreOf(cm, expectation);
}

function sumOfSquares(readings: readonly ScoredReading[]): number {
  return readings.reduce((sum, reading) => sum + score(reading) ** 2, 0);
}

/** The reading as it would be expected had she followed another size's numbers at her gauge. */
function inSize(
  index: PatternIndex,
  { tester, reading, size }: { tester: Tester; reading: ScoredReading; size: string },
): ScoredReading {
  const measurement = index.pattern.measurements.find(({ id }) => id === reading.measurement);
  if (measurement === undefined) return reading;
  const working = { ...patternWorking(index, size), gaugeOf: workedAtOwnGauge(index, tester).gaugeOf };
  const split = measure(index, measurement, working);
  return { ...reading, expectation: expectationOf(index, split, { tester, toleranceCm: measurement.toleranceCm }) };
}
