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
