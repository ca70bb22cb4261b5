import type { StepOf } from "../pattern";
import { withNoun } from "../shaping";
import { placeIn, type Place } from "./change-stitches";
import type { GarmentWork } from "./garment-work";
import { isRound, stitchWidthCm, type LivePart } from "./live-part";
import { hasStitches, startOf } from "./work-step";
import { workRow } from "./work-row";

/**
 * Works short rows, all stitches staying on the needle. At an edge each turn leaves so many stitches more unworked there, and
 * the row after it goes back; of both edges each row turns before one, in turn. At the centre or a marker they begin with so many
 * stitches about it, and each turn takes in so many more.
 */
export function shortRowsStep(work: GarmentWork, part: LivePart, step: StepOf<"short-rows">): void {
  const each = work.number(step, step.each);
  const turns = work.number(step, step.turns);
  if (each === 0 || turns === 0 || !hasStitches(work, part, step)) return;
  const at = placeIn(work, part, { step, at: step.at });
  const isAtEdge = at === "left" || at === "right" || at === "both";
  const most = at === "both" ? 2 * turns * each : turns * each;
  const room = isAtEdge ? part.stitches - 1 : part.stitches;
  const fitting = most <= room ? turns : Math.floor(room / (at === "both" ? 2 * each : each));
  if (most > room)
    work.fault(
      step.id,
      `${withNoun(most, "stitch")} would be passed in short rows, and “${part.id}” has ${part.stitches}. Turn less often, or after fewer stitches.`,
    );
  if (isAtEdge) fromEdges(work, part, { step, at, each, turns: fitting });
  else fromMiddle(work, part, { step, at, each, turns: fitting });
}

interface Turns<At> {
  readonly step: StepOf<"short-rows">;
  readonly at: At;
  readonly each: number;
  readonly turns: number;
}

/** A row ends at the edge where it does not start; before a one-sided turn, a row is worked across where it starts there. */
function fromEdges(
  work: GarmentWork,
  part: LivePart,
  { step, at, each, turns }: Turns<"left" | "right" | "both">,
): void {
  const unworked = { left: 0, right: 0 };
  if (turns > 0 && at === startOf(part) && !isRound(part) && !workRow(work, part, step.id)) return;
  let end: "left" | "right" = at === "both" ? (startOf(part) === "right" ? "left" : "right") : at;
  for (let turn = 0; turn < (at === "both" ? 2 * turns : turns); turn += 1) {
    unworked[end] += each;
    for (let row = 0; row < (at === "both" ? 1 : 2); row += 1) if (!shortRow(work, part, { step, ...unworked })) return;
    if (at === "both") end = end === "left" ? "right" : "left";
  }
}

function fromMiddle(work: GarmentWork, part: LivePart, { step, at, each, turns }: Turns<Place>): void {
  const position = typeof at === "object" ? part.markers.get(at.marker) : part.stitches / 2;
  if (position === undefined)
    return work.fault(
      step.id,
      `There is no marker in “${part.id}” to work short rows about. Place it before this step.`,
    );
  for (let turn = 1; turn <= turns; turn += 1) {
    const stitches = turn * each;
    const right = Math.min(Math.max(position - stitches / 2, 0), part.stitches - stitches);
    if (!shortRow(work, part, { step, right, left: part.stitches - stitches - right })) return;
  }
}

function shortRow(
  work: GarmentWork,
  part: LivePart,
  { step, left, right }: { step: StepOf<"short-rows">; left: number; right: number },
): boolean {
  const stitchCm = stitchWidthCm(part, work.numbers.stitchCm(part.fabric));
  return workRow(work, part, step.id, {
    leftCm: part.leftCm + left * stitchCm,
    rightCm: part.rightCm - right * stitchCm,
    stitches: part.stitches - left - right,
  });
}
