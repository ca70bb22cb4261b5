import type { StepOf } from "../pattern";
import { withNoun } from "../shaping";
import type { GarmentWork } from "./garment-work";
import type { LivePart } from "./live-part";

/**
 * Places a marker so many stitches from the right edge, or from the start of the round, as a right-side row meets them. One that
 * is already there is moved.
 */
export function markStep(work: GarmentWork, part: LivePart, step: StepOf<"mark">): void {
  const stitches = step.at === "start-of-round" ? 0 : work.number(step, step.at);
  if (stitches > part.stitches)
    return work.fault(
      step.id,
      `The marker “${step.marker}” comes after ${withNoun(stitches, "stitch")}, and “${part.id}” has ${part.stitches}. Place it among them.`,
    );
  part.markers.set(step.marker, work.isSwapped(step, part) ? part.stitches - stitches : stitches);
}

/** Removes a marker. */
export function unmarkStep(work: GarmentWork, part: LivePart, step: StepOf<"unmark">): void {
  if (!part.markers.delete(step.marker))
    work.fault(step.id, `There is no marker “${step.marker}” in “${part.id}” to take away.`);
}
