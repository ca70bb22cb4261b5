import { formatPath, type Fault } from "./faults";
import { ownValue } from "./own-value";
import type { PatternDocument } from "./pattern-document";

/** Sizes that are not in ascending order of the body measurement that orders them. Only grading requires the order. */
export function sizeOrderFaults({ sizes, sizeBy }: PatternDocument): Fault[] {
  return sizes.flatMap((size, index) => {
    const before = sizes[index - 1];
    if (before === undefined || (ownValue(size.body, sizeBy) ?? 0) >= (ownValue(before.body, sizeBy) ?? 0)) return [];
    const says = `${size.label} has a smaller body than ${before.label} before it: put the sizes in order, from small to large.`;
    return [{ path: formatPath(["sizes", index]), says }];
  });
}

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
