import type { Tester } from "../../pattern";
import type { PatternIndex } from "../../prediction";
import type { Outlier } from "../gaps-output";
import { scoredReadings, scoreOf, type Expectation, type ScoredReading } from "./reading-scores";
import {
  bestCorrection,
  possibleLengths,
  PLAUSIBLE_SCORE,
  OUTLIER_SCORE,
  type CorrectedValue,
} from "../outliers/entry-errors";

/** A reading outlier, with its index among the tester's readings. */
export interface ReadingOutlier {
  readonly index: number;
  readonly suspect: Outlier;
}

/**
 * Readings far from their expectation: set aside if a common entry error explains them, otherwise only flagged.
 *
 * @param tester with excluded swatches set aside.
 * @param medians gaps of `medianGaps`: a slip may bring a reading to what it should have come to, or to what others' came to.
 * @see docs/method.md#outliers.
 */
export function readingOutliers(
  index: PatternIndex,
  tester: Tester,
  medians: ReadonlyMap<string, number>,
): ReadingOutlier[] {
  const scored = scoredReadings(index, tester).map((reading) => withMedian(reading, medians));
  const far = scored.filter(({ cm, expectation }) => Math.abs(scoreOf(cm, expectation)) > OUTLIER_SCORE);
  const corrections = new Map<number, CorrectedValue | undefined>(
    far.map((reading) => [reading.index, likelyError(reading, scored)]),
  );
  for (const reading of far) {
    const partner =
      corrections.get(reading.index)?.slip === "swapped-letters" ? swappedWith(reading, scored) : undefined;
    if (partner && !corrections.has(partner.index))
      corrections.set(partner.index, { slip: "swapped-letters", wouldBe: reading.cm });
  }
  return tester.readings.flatMap((reading, index) => {
    if (!corrections.has(index) && reading.decision !== "set-aside") return [];
    const slip = corrections.get(index);
    const setAside = reading.decision === undefined ? slip !== undefined : reading.decision === "set-aside";
    const suspect = {
      tester: tester.id,
      what: "reading" as const,
      id: reading.measurement,
      value: reading.cm,
      slip: slip?.slip ?? null,
      wouldBe: slip?.wouldBe ?? null,
      setAside,
    };
    return [{ index, suspect }];
  });
}

interface ComparedReading extends ScoredReading {
  /** Expectation shifted by the median gap of other testers' readings. */
  readonly likeOthers: Expectation;
}

function withMedian(reading: ScoredReading, usual: ReadonlyMap<string, number>): ComparedReading {
  const { cm, sdCm } = reading.expectation;
  return { ...reading, likeOthers: { cm: cm + (usual.get(reading.measurement) ?? 0), sdCm } };
}

/** Distance of a length from the expectation or from other testers' readings, whichever is smaller. */
function distance(cm: number, { expectation, likeOthers }: ComparedReading): number {
  return Math.min(Math.abs(scoreOf(cm, expectation)), Math.abs(scoreOf(cm, likeOthers)));
}

/** Undefined if the reading agrees with other testers' readings. */
function likelyError(reading: ComparedReading, all: readonly ComparedReading[]): CorrectedValue | undefined {
  if (distance(reading.cm, reading) <= PLAUSIBLE_SCORE) return undefined;
  const partner = swappedWith(reading, all);
  const swapped = partner ? [{ slip: "swapped-letters" as const, wouldBe: partner.cm }] : [];
  return bestCorrection([...possibleLengths(reading.cm, reading), ...swapped], ({ wouldBe }) =>
    distance(wouldBe, reading),
  );
}

/** A reading of another measurement that would fit if the two were swapped, and that does not fit its own measurement. */
function swappedWith(reading: ComparedReading, all: readonly ComparedReading[]): ComparedReading | undefined {
  return all.find(
    (other) =>
      other.measurement !== reading.measurement &&
      distance(other.cm, other) > PLAUSIBLE_SCORE &&
      distance(other.cm, reading) <= PLAUSIBLE_SCORE &&
      distance(reading.cm, other) <= PLAUSIBLE_SCORE,
  );
}
