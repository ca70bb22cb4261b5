import type { Tester } from "../../pattern";
import type { PatternIndex } from "../../prediction";
import type { Suspect } from "../gaps-output";
import { scoredReadings, scoreOf, type ScoredReading } from "./reading-scores";
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
 * @see design 4.7.
 */
export function readingSuspects(index: PatternIndex, tester: Tester): ReadingSuspect[] {
  const scored = scoredReadings(index, tester);
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

function likelySlip(reading: ScoredReading, all: readonly ScoredReading[]): Mended | undefined {
  const partner = partnerOf(reading, all);
  const swapped = partner ? [{ slip: "swapped-letters" as const, wouldBe: partner.cm }] : [];
  return bestMended([...mendedLengths(reading.cm, reading), ...swapped], ({ wouldBe }) =>
    scoreOf(wouldBe, reading.expectation),
  );
}

/** Another measurement's reading that fits here while this one fits there, and that does not fit where it stands. */
function partnerOf(reading: ScoredReading, all: readonly ScoredReading[]): ScoredReading | undefined {
  return all.find(
    (other) =>
      other.measurement !== reading.measurement &&
      Math.abs(scoreOf(other.cm, other.expectation)) > PLAUSIBLE_SCORE &&
      Math.abs(scoreOf(other.cm, reading.expectation)) <= PLAUSIBLE_SCORE &&
      Math.abs(scoreOf(reading.cm, other.expectation)) <= PLAUSIBLE_SCORE,
  );
}
