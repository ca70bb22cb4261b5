import type { Verdict } from "./gaps-output";

/** A verdict is passed when its chance is at least this. */
const SURE = 0.9;

/**
 * Verdict on a gap.
 *
 * @param gap estimate and tolerance in the same unit, chance that the true gap is beyond one tolerance.
 * @see docs/method.md#verdicts.
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
  if (chanceOff >= SURE) return "off";
  if (1 - chanceOff >= SURE) return "holds";
  return Math.abs(gap) > tolerance ? "leaning" : "unsettled";
}
