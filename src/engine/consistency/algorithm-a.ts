import { mean, median, standardDeviation } from "./summaries";

/** Values further than this from the mean are winsorised, in robust standard deviations (ISO 13528, C.3.1). */
const WINSORISING_LIMIT = 1.5;
/** Converts the median absolute deviation to a standard deviation (ISO 13528, C.3.1). */
const MAD_FACTOR = 1.483;
/** Corrects the standard deviation for winsorising (ISO 13528, C.3.1; exactly 1.133393). */
const SD_FACTOR = 1.134;
const MAX_ITERATIONS = 1000;
const TOLERANCE = 1e-12;

export interface RobustSummary {
  readonly mean: number;
  readonly sd: number;
  readonly status: "converged" | "stopped";
}

/**
 * Robust mean and standard deviation: values beyond 1.5 standard deviations are moved to that limit.
 *
 * @param values at least one, any unit. If more than half are equal, the iteration starts from the ordinary standard deviation.
 * @returns mean and sd in the values' unit; the sd of a single value is 0.
 * @throws {RangeError} for no values.
 * @see ISO 13528:2015, C.3.1, Algorithm A, with the factor 1.134.
 */
export function algorithmA(values: readonly number[]): RobustSummary {
  const sorted = values.toSorted((left, right) => left - right);
  let middle = median(sorted);
  const absolute = sorted.map((value) => Math.abs(value - middle)).toSorted((left, right) => left - right);
  let sd = MAD_FACTOR * median(absolute) || standardDeviation(sorted);
  if (sd === 0) return { mean: middle, sd: 0, status: "converged" };
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration += 1) {
    const low = middle - WINSORISING_LIMIT * sd;
    const high = middle + WINSORISING_LIMIT * sd;
    const winsorised = sorted.map((value) => Math.min(high, Math.max(low, value)));
    const before = { middle, sd };
    middle = mean(winsorised);
    sd = SD_FACTOR * standardDeviation(winsorised);
    const change = Math.abs(middle - before.middle) + Math.abs(sd - before.sd);
    if (change <= TOLERANCE * (Math.abs(middle) + sd)) return { mean: middle, sd, status: "converged" };
  }
  return { mean: middle, sd, status: "stopped" };
}
