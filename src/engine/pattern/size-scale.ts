import { ownValue } from "./own-value";
import type { PatternDocument } from "./pattern-document";

/**
 * Sizes on a scale from −1 (smallest body by `sizeBy`) to 1 (largest); 0 where there is one size or all are alike.
 *
 * @returns z by size id.
 * @see docs/method.md#words-and-units.
 */
export function sizeScale({ sizes, sizeBy }: PatternDocument): ReadonlyMap<string, number> {
  const bodies = sizes.map(({ body }) => ownValue(body, sizeBy) ?? 0);
  const smallest = Math.min(...bodies);
  const range = Math.max(...bodies) - smallest;
  return new Map(
    sizes.map(({ id }, index) => [id, range === 0 ? 0 : (2 * ((bodies[index] ?? smallest) - smallest)) / range - 1]),
  );
}
