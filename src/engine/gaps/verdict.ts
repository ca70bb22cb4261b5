import type { Verdict } from "./gaps-output";

/** Probability required for the verdicts "off" and "holds". */
export const MIN_PROBABILITY = 0.9;

/**
 * Verdict on a gap.
 *
 * @param gap estimate and tolerance in the same unit, probability that the true gap exceeds one tolerance.
 * @see docs/method.md#how-many-testers.
 */
export function verdictOf({
  gap,
  tolerance,
  chanceOff,
}: {
  gap: number;
  tolerance: number;
  chanceOff: number;
}): Verdict {
  if (chanceOff >= MIN_PROBABILITY) return "off";
  if (1 - chanceOff >= MIN_PROBABILITY) return "holds";
  return Math.abs(gap) > tolerance ? "leaning" : "unsettled";
}

/** Whether a verdict is certain enough, either way. */
export function isSettled(verdict: Verdict | null): boolean {
  return verdict === "off" || verdict === "holds";
}

/** Whether a verdict says that the cell is, or probably is, different from the pattern. */
export function isBeyond(verdict: Verdict | null): boolean {
  return verdict === "off" || verdict === "leaning";
}
