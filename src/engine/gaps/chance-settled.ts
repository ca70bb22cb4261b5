import { normalChance, normalDensity, normalQuantile } from "../distributions";
import { MIN_PROBABILITY } from "./verdict";

/** Newton's method finds the bounds in three or four steps, and in more only where there is hardly one. */
const MAX_STEPS = 50;
const CLOSE = 1e-9;

/** A cell's gap as it is known now, tolerances, and how well it will be known. */
interface SettlingCell {
  readonly mean: number;
  readonly variance: number;
  readonly varianceAfter: number;
}

/**
 * Chance that a cell's verdict will be `off` or `holds` once more is known of it.
 *
 * What is known now says where the estimate may move: it is then normal about today's, with the variance that is lost. The
 * verdict is settled where the estimate lies clear of the tolerance's edge, on either side of it.
 *
 * @returns from 0 to 1.
 * @see docs/method.md#how-many-testers.
 */
export function chanceSettled({ mean, variance, varianceAfter }: SettlingCell): number {
  const after = Math.sqrt(varianceAfter);
  const moves = Math.sqrt(Math.max(0, variance - varianceAfter));
  const { holdsWithin, offBeyond } = settledBounds(after);
  if (moves === 0) return Number(Math.abs(mean) <= holdsWithin || Math.abs(mean) >= offBeyond);
  const below = (bound: number) => normalChance((bound - mean) / moves);
  const holds = holdsWithin < 0 ? 0 : below(holdsWithin) - below(-holdsWithin);
  return holds + below(-offBeyond) + 1 - below(offBeyond);
}

/** Sizes of an estimate with this standard deviation up to which the verdict is `holds`, and from which on it is `off`; the first below 0 where there is none. */
function settledBounds(sd: number): { readonly holdsWithin: number; readonly offBeyond: number } {
  const chanceOff = (estimate: number) => normalChance((estimate - 1) / sd) + normalChance((-1 - estimate) / sd);
  const slopeOff = (estimate: number) => (normalDensity((estimate - 1) / sd) - normalDensity((1 + estimate) / sd)) / sd;
  const bound = (chance: number) => {
    let estimate = Math.max(0, 1 + normalQuantile(chance) * sd);
    for (let step = 0; step < MAX_STEPS; step += 1) {
      const next = Math.max(0, estimate - (chanceOff(estimate) - chance) / slopeOff(estimate));
      if (!(Math.abs(next - estimate) > CLOSE)) break;
      estimate = next;
    }
    return estimate;
  };
  const holdsWithin = chanceOff(0) > 1 - MIN_PROBABILITY ? -1 : bound(1 - MIN_PROBABILITY);
  return { holdsWithin, offBeyond: bound(MIN_PROBABILITY) };
}
