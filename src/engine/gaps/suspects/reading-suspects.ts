import type { Tester } from "../../pattern";
import type { PatternIndex } from "../../prediction";
import type { Suspect } from "../gaps-output";
import { scoredReadings, scoreOf, type Expectation, type ScoredReading } from "./reading-scores";
import { bestMended, mendedLengths, PLAUSIBLE_SCORE, SUSPECT_SCORE, type Mended } from "./slips";

/** A suspect reading, with where it stands among her readings. */
export interface ReadingSuspect {
  readonly at: number;
  readonly suspect: Suspect;
}

/**
 * Readings far from what they should have come to: set aside where a common slip explains them, else kept and marked.
 *
 * @param tester with the swatches that do not count set aside.
 * @param usual gaps of `usualGaps`: a slip may bring a reading to what it should have come to, or to what others' came to.
 * @see docs/method.md#outliers.
 */
export function readingSuspects(
  index: PatternIndex,
  tester: Tester,
  usual: ReadonlyMap<string, number>,
): ReadingSuspect[] {
  const scored = scoredReadings(index, tester).map((reading) => withUsual(reading, usual));
  const far = scored.filter(({ cm, expectation }) => Math.abs(scoreOf(cm, expectation)) > SUSPECT_SCORE);
  const mended = new Map<number, Mended | undefined>(far.map((reading) => [reading.at, likelySlip(reading, scored)]));
  for (const reading of far) {
    const partner = mended.get(reading.at)?.slip === "swapped-letters" ? partnerOf(reading, scored) : undefined;
    if (partner && !mended.has(partner.at)) mended.set(partner.at, { slip: "swapped-letters", wouldBe: reading.cm });
  }
  return tester.readings.flatMap((reading, at) => {
    if (!mended.has(at) && reading.decision !== "set-aside") return [];
    const slip = mended.get(at);
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
    return [{ at, suspect }];
  });
}

interface PlacedReading extends ScoredReading {
  /** What others' readings say that it should come to. */
  readonly usually: Expectation;
}

function withUsual(reading: ScoredReading, usual: ReadonlyMap<string, number>): PlacedReading {
  const { cm, sdCm } = reading.expectation;
  return { ...reading, usually: { cm: cm + (usual.get(reading.measurement) ?? 0), sdCm } };
}

/** Distance of a length from what a reading should have come to, or from what others' came to, whichever is nearer. */
function distance(cm: number, { expectation, usually }: PlacedReading): number {
  return Math.min(Math.abs(scoreOf(cm, expectation)), Math.abs(scoreOf(cm, usually)));
}

/** None where the reading came out as others' did. */
function likelySlip(reading: PlacedReading, all: readonly PlacedReading[]): Mended | undefined {
  if (distance(reading.cm, reading) <= PLAUSIBLE_SCORE) return undefined;
  const partner = partnerOf(reading, all);
  const swapped = partner ? [{ slip: "swapped-letters" as const, wouldBe: partner.cm }] : [];
  return bestMended([...mendedLengths(reading.cm, reading), ...swapped], ({ wouldBe }) => distance(wouldBe, reading));
}

/** Another measurement's reading that fits here while this one fits there, and that does not fit where it stands. */
function partnerOf(reading: PlacedReading, all: readonly PlacedReading[]): PlacedReading | undefined {
  return all.find(
    (other) =>
      other.measurement !== reading.measurement &&
      distance(other.cm, other) > PLAUSIBLE_SCORE &&
      distance(other.cm, reading) <= PLAUSIBLE_SCORE &&
      distance(reading.cm, other) <= PLAUSIBLE_SCORE,
  );
}
