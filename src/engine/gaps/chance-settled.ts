import { normalChance, normalQuantile } from "../distributions";
import { MIN_PROBABILITY } from "./verdict";

/** Enough halvings for the bounds to be exact beyond what a chance is shown to. */
const HALVINGS = 20;

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
  const far = 1 + normalQuantile(MIN_PROBABILITY) * sd;
  const bound = (chance: number) => {
    let [low, high] = [0, far];
    for (let halving = 0; halving < HALVINGS; halving += 1) {
      const middle = (low + high) / 2;
      if (chanceOff(middle) < chance) low = middle;
      else high = middle;
    }
    return high;
  };
  const holdsWithin = chanceOff(0) > 1 - MIN_PROBABILITY ? -1 : bound(1 - MIN_PROBABILITY);
  return { holdsWithin, offBeyond: bound(MIN_PROBABILITY) };
}
