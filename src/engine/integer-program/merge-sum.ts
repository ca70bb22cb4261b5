import type { Sum } from "./integer-program";

/** The same sum with one term per variable and without zero weights. */
export function mergeSum(sum: Sum): Sum {
  const weights = new Map<number, number>();
  for (const { variable, weight } of sum) weights.set(variable, (weights.get(variable) ?? 0) + weight);
  return [...weights].flatMap(([variable, weight]) => (weight === 0 ? [] : [{ variable, weight }]));
}
