import { at } from "../linear-algebra";

/**
 * How the thresholds between the steps of a scale are told: each for itself, or mirrored about 0 (for an odd number of
 * steps), so that a value of 0 is answered with as many steps on one side of the middle as on the other.
 */
export type ThresholdKind = "free" | "mirrored";

/** How many numbers tell the thresholds of a scale with so many steps. */
export function thresholdCount(kind: ThresholdKind, steps: number): number {
  return kind === "free" ? steps - 1 : (steps - 1) / 2;
}

/**
 * Thresholds in ascending order.
 *
 * @param told free: the first threshold, then logarithms of the distances; mirrored: logarithms of the distances from 0 upward.
 */
export function thresholdsOf(kind: ThresholdKind, told: Float64Array, steps: number): Float64Array {
  const thresholds = new Float64Array(steps - 1);
  const count = thresholdCount(kind, steps);
  let sum = 0;
  for (let j = 0; j < count; j += 1) {
    sum = kind === "free" && j === 0 ? at(told, 0) : sum + Math.exp(at(told, j));
    if (kind === "free") {
      thresholds[j] = sum;
    } else {
      thresholds[count + j] = sum;
      thresholds[count - 1 - j] = -sum;
    }
  }
  return thresholds;
}

/** Slopes by the numbers that tell the thresholds, from slopes by the thresholds; written to the start of `slopes`. */
export function thresholdSlopes(
  kind: ThresholdKind,
  { told, byThreshold }: { readonly told: Float64Array; readonly byThreshold: Float64Array },
  slopes: Float64Array,
): void {
  const count = thresholdCount(kind, byThreshold.length + 1);
  let sum = 0;
  for (let j = count - 1; j >= 0; j -= 1) {
    sum += kind === "free" ? at(byThreshold, j) : at(byThreshold, count + j) - at(byThreshold, count - 1 - j);
    slopes[j] = kind === "free" && j === 0 ? sum : sum * Math.exp(at(told, j));
  }
}

/** The numbers that tell these thresholds. */
export function toldThresholds(kind: ThresholdKind, thresholds: readonly number[]): Float64Array {
  const steps = thresholds.length + 1;
  const count = thresholdCount(kind, steps);
  const own = kind === "free" ? thresholds : thresholds.slice(count);
  return Float64Array.from(own, (threshold, j) => {
    if (j === 0) return kind === "free" ? threshold : Math.log(threshold);
    return Math.log(threshold - (own[j - 1] ?? Number.NaN));
  });
}
