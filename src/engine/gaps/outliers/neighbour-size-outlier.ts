import type { Tester } from "../../pattern";
import { measure, patternWorking, workedAtOwnGauge, type PatternIndex } from "../../prediction";
import type { Outlier } from "../gaps-output";
import { expectationOf, scoredReadings, scoreOf, type ScoredReading } from "../outliers/reading-scores";

const MIN_READINGS = 3;
/** Required reduction of the sum of squared scores, and its largest remaining value per reading, for a neighbour size to be reported. */
const MIN_REDUCTION = 16;
const MAX_REMAINING = 1;

/**
 * A tester whose readings all fit a neighbouring size better than their own: reported, never set aside.
 *
 * @param tester with excluded swatches and readings set aside.
 * @returns the reading furthest from its expectation, with the expectation for the neighbouring size.
 * @see docs/method.md#outliers.
 */
export function neighbourSizeOutlier(index: PatternIndex, tester: Tester): Outlier | undefined {
  const scored = scoredReadings(index, tester).filter(({ index }) => tester.readings[index]?.decision !== "set-aside");
  if (scored.length < MIN_READINGS) return undefined;
  const ownSum = sumOfSquares(scored);
  if (ownSum <= MIN_REDUCTION) return undefined;
  const position = index.pattern.sizes.findIndex(({ id }) => id === tester.size);
  const neighbours = [index.pattern.sizes[position - 1], index.pattern.sizes[position + 1]].flatMap((size) => {
    if (size === undefined) return [];
    const other = scored.map((reading) => inSize(index, { tester, reading, size: size.id }));
    const sum = sumOfSquares(other);
    return ownSum - sum > MIN_REDUCTION && sum <= MAX_REMAINING * scored.length ? [{ other, sum }] : [];
  });
  const [best] = neighbours.toSorted((left, right) => left.sum - right.sum);
  const [furthest] = scored.toSorted((left, right) => Math.abs(score(right)) - Math.abs(score(left)));
  const wouldBe = best?.other.find((reading) => reading.index === furthest?.index)?.expectation.cm;
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

/** The reading with its expectation if the tester had followed another size at their gauge. */
function inSize(
  index: PatternIndex,
  { tester, reading, size }: { tester: Tester; reading: ScoredReading; size: string },
): ScoredReading {
  const measurement = index.pattern.measurements.find(({ id }) => id === reading.measurement);
  if (measurement === undefined) return reading;
  const { gaugeOf, growthOf } = workedAtOwnGauge(index, tester);
  const working = { ...patternWorking(index, size), gaugeOf, growthOf };
  const split = measure(index, measurement, working);
  return { ...reading, expectation: expectationOf(index, split, { tester, measurement }) };
}
