import { normalChance } from "../../distributions";

/** One component of a mixture of normal distributions. */
export interface MixturePart {
  readonly weight: number;
  readonly mean: number;
  readonly sd: number;
}

/** Enough steps to reach full precision by bisection alone. */
const MAX_STEPS = 60;
/** Convergence tolerance relative to the bracket's width. */
const MIN_STEP = 1e-13;

/**
 * Weights that add up to 1.
 *
 * @param logWeights their logs, up to a constant; at least one of them finite.
 * @param leastShare of the largest weight: smaller ones are 0.
 */
export function weightsOf(logWeights: readonly number[], leastShare = 0): number[] {
  const best = Math.max(...logWeights);
  const shares = logWeights.map((logWeight) => Math.exp(logWeight - best));
  const kept = shares.map((share) => (share >= leastShare ? share : 0));
  const total = kept.reduce((sum, share) => sum + share, 0);
  return kept.map((share) => share / total);
}

/** Chance that the value is at most `bound`. Weights add up to 1. */
export function mixtureChance(parts: readonly MixturePart[], bound: number): number {
  let chance = 0;
  for (const { weight, mean, sd } of parts) chance += weight * normalChance((bound - mean) / sd);
  return chance;
}

/**
 * Quantile of the mixture: Newton's method, with bisection where it leaves the bracket between the
 * components' quantiles.
 *
 * @param standardQuantile quantile of the standard normal at `chance`.
 */
export function mixtureQuantile(parts: readonly MixturePart[], chance: number, standardQuantile: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const { mean, sd } of parts) {
    low = Math.min(low, mean + standardQuantile * sd);
    high = Math.max(high, mean + standardQuantile * sd);
  }
  const tolerance = MIN_STEP * (high - low);
  let value = (low + high) / 2;
  for (let step = 0; step < MAX_STEPS && high - low > tolerance; step += 1) {
    const excess = mixtureChance(parts, value) - chance;
    if (excess < 0) low = value;
    else high = value;
    const newton = value - excess / mixtureDensity(parts, value);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - value) <= tolerance) return next;
    value = next;
  }
  return value;
}

function mixtureDensity(parts: readonly MixturePart[], value: number): number {
  let density = 0;
  for (const { weight, mean, sd } of parts) {
    const standard = (value - mean) / sd;
    density += (weight / sd) * Math.exp((-standard * standard) / 2);
  }
  return density / Math.sqrt(2 * Math.PI);
}

/** Mean and standard deviation of the mixture. */
export function mixtureMoments(parts: readonly MixturePart[]): { readonly mean: number; readonly sd: number } {
  const mean = parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
  const square = parts.reduce((sum, part) => sum + part.weight * (part.sd ** 2 + (part.mean - mean) ** 2), 0);
  return { mean, sd: Math.sqrt(square) };
}
