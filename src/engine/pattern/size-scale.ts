import { own } from "./own";
import type { PatternDocument } from "./pattern-document";

/**
 * Sizes on a scale from −1 (smallest body by `sizeBy`) to 1 (largest); 0 where there is one size or all are alike.
 *
 * @returns z by size id.
 * @see docs/method.md#words-and-units.
 */
export function sizeScale({ sizes, sizeBy }: PatternDocument): ReadonlyMap<string, number> {
  const bodies = sizes.map(({ body }) => own(body, sizeBy) ?? 0);
  const least = Math.min(...bodies);
  const range = Math.max(...bodies) - least;
  return new Map(sizes.map(({ id }, at) => [id, range === 0 ? 0 : (2 * ((bodies[at] ?? least) - least)) / range - 1]));
}
