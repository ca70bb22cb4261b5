import type { GarmentStep, StepPlace } from "../pattern";
import { withNoun } from "../shaping";
import type { GarmentWork } from "./garment-work";
import { setSpan, stitchWidthCm, type LivePart } from "./live-part";

export type Side = "left" | "right";

/** Where stitches change in a part: at one edge or both, in between, or at a marker. Left and right are the part's own. */
export type Place = StepPlace;

/** As a right-side row meets them. */
export const BOTH = ["right", "left"] as const;

const OTHER = { left: "right", right: "left" } as const;

/** The place in the part's own terms: in a mirrored copy left is right. */
export function placeIn(work: GarmentWork, part: LivePart, { step, at }: { step: GarmentStep; at: Place }): Place {
  return (at === "left" || at === "right") && work.isSwapped(step, part) ? OTHER[at] : at;
}

/**
 * Adds stitches to a part or takes some away (below 0), at each edge where both are named, and moves its edges by as much. What
 * changes within the row moves both edges by half.
 *
 * @returns stitches added or taken in all: fewer than asked for, and a fault, where there are not so many.
 */
export function changeStitches(
  work: GarmentWork,
  part: LivePart,
  { step, at, stitches, verb }: { step: GarmentStep; at: Place; stitches: number; verb: string },
): number {
  let sum = 0;
  for (const place of at === "both" ? BOTH : [at]) {
    const asked = stitches < 0 ? -Math.min(-stitches, part.stitches) : stitches;
    if (asked !== stitches && !part.isFaulty) {
      part.isFaulty = true;
      const message = `There ${part.stitches === 1 ? "is" : "are"} ${withNoun(part.stitches, "stitch")} left in “${part.id}”, and ${-stitches} are to be ${verb}.`;
      work.fault(step.id, `${message} Take away at most ${part.stitches}, or begin with more.`);
    }
    changeAt(work, part, { step, place, stitches: asked });
    sum += asked;
  }
  return sum;
}

function changeAt(
  work: GarmentWork,
  part: LivePart,
  { step, place, stitches }: { step: GarmentStep; place: Exclude<Place, "both">; stitches: number },
): void {
  const widthCm = stitches * stitchWidthCm(part, work.numbers.stitchCm(part.fabric));
  const isEdge = part.worked === "flat" && (place === "left" || place === "right");
  const leftShare = isEdge ? (place === "left" ? 1 : 0) : 0.5;
  moveMarkers(work, part, { step, place, stitches });
  part.stitches += stitches;
  setSpan(part, part.leftCm - leftShare * widthCm, part.rightCm + (1 - leftShare) * widthCm);
}

/** Stitches to the right of a marker change with what happens there; one that stands beyond the last stitch moves in to it. */
function moveMarkers(
  work: GarmentWork,
  part: LivePart,
  { step, place, stitches }: { step: GarmentStep; place: Exclude<Place, "both">; stitches: number },
): void {
  const after = part.stitches + stitches;
  const named = typeof place === "object" ? part.markers.get(place.marker) : undefined;
  if (typeof place === "object" && named === undefined) {
    work.fault(step.id, `There is no marker “${place.marker}” in “${part.id}”. Place it before this step.`);
    return;
  }
  for (const [marker, position] of part.markers) {
    const share = place === "right" ? 1 : place === "left" ? 0 : shareBefore(position, named, part.stitches);
    part.markers.set(marker, Math.min(Math.max(position + Math.round(stitches * share), 0), after));
  }
}

/** Share of a change within the row that lies to the right of a marker at a position. */
function shareBefore(position: number, at: number | undefined, stitches: number): number {
  if (at === undefined) return stitches === 0 ? 0 : position / stitches;
  if (position === at) return 0.5;
  return position > at ? 1 : 0;
}

/** Notes what was bound off, cast on or held at an edge, since the last row that ended there. */
export function noteAtEdge(part: LivePart, side: Side, run: { step: string; stitches: number; held: number }): void {
  const { since } = part.sides[side];
  part.sides[side].since = {
    step: run.step,
    stitches: since.stitches + run.stitches,
    held: since.held + run.held,
  };
}
