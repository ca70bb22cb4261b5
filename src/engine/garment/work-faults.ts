import type { PatternDocument } from "../pattern";
import type { GarmentFault } from "./garment-work";
import { withNumbers } from "./with-numbers";
import { workGarment } from "./work-garment";

/**
 * What of a garment cannot be worked, in all sizes: the whole truth of one grading, of which `workRules` are the part that can be
 * told beforehand.
 *
 * @param pattern a parsed pattern; what needs a count without a number is left out.
 */
export function workFaults(pattern: PatternDocument): GarmentFault[] {
  return pattern.sizes.flatMap(({ id }) => [...workGarment(withNumbers(pattern, id).pattern, id).faults]);
}
