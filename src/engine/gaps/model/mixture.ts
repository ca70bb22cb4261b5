import { normalChance } from "../../distributions";

/** One of several normal distributions that a value may have. */
export interface MixturePart {
  readonly weight: number;
  readonly mean: number;
  readonly sd: number;
}

/** Enough halvings to bring any bracket down to the last digits. */
const HALVINGS = 60;

/** Chance that the value is at most `bound`. Weights add up to 1. */
export function mixtureChance(parts: readonly MixturePart[], bound: number): number {
  let chance = 0;
  for (const { weight, mean, sd } of parts) chance += weight * normalChance((bound - mean) / sd);
  return chance;
}

/**
 * Value that the mixture stays below with a given chance, by halving between the parts' own quantiles.
 *
 * @param standardQuantile quantile of the standard normal at `chance`.
 */
export function mixtureQuantile(parts: readonly MixturePart[], chance: number, standardQuantile: number): number {
  const ends = parts.map(({ mean, sd }) => mean + standardQuantile * sd);
  let low = Math.min(...ends);
  let high = Math.max(...ends);
  for (let halving = 0; halving < HALVINGS && low < high; halving += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (mixtureChance(parts, middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Mean and standard deviation of the mixture. */
export function mixtureMoments(parts: readonly MixturePart[]): { readonly mean: number; readonly sd: number } {
  const mean = parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
  const square = parts.reduce((sum, part) => sum + part.weight * (part.sd ** 2 + (part.mean - mean) ** 2), 0);
  return { mean, sd: Math.sqrt(square) };
}
