import type { StepNumber, StepOf, StepShape } from "../pattern";
import { withNoun } from "../shaping";
import { BOTH, changeStitches, noteAtEdge, placeIn, type Place } from "./change-stitches";
import type { GarmentWork } from "./garment-work";
import { isRound, setWidth, stitchWidthCm, type LivePart } from "./live-part";
import { shapingRows } from "./shaping-rows";
import { workRows } from "./work-row";

/** A shaping that falls in a row: at one place, so many stitches more or fewer. */
interface Due {
  readonly row: number;
  readonly as: StepShape["as"];
  readonly at: Exclude<Place, "both">;
  readonly stitches: number;
}

const VERBS = { increase: "increased", decrease: "decreased", "bind-off": "bound off", add: "added" } as const;

/**
 * Works so many rows even, or with any number of shapings at the same time: the stitches of a row are those before it and what
 * all shapings of the row add and take away. Bind-offs and cast-ons at an edge wait for the next row that starts there.
 */
export function workStep(work: GarmentWork, part: LivePart, step: StepOf<"work">): void {
  setFabric(work, part, step.fabric ?? part.piece.fabric);
  const { value: rows, message } = work.numbers.rowsOf(step.rows, part.fabric);
  if (message !== null) work.fault(step.id, message);
  const queue = (step.shape ?? [])
    .flatMap((shape) => duesOf(work, part, { step, shape, rows }))
    .toSorted((one, other) => one.row - other.row);
  let next = 0;
  let waiting: Due[] = [];
  let even = 0;
  for (let row = Math.min(rows, 1); row <= rows; row += even) {
    if (waiting.length > 0) waiting = waiting.filter((due) => !shapeInTurn(work, part, { step, due }));
    for (let due = queue[next]; due !== undefined && due.row <= row; due = queue[next]) {
      if (!shapeInTurn(work, part, { step, due })) waiting.push(due);
      next += 1;
    }
    if (rows === 0) break;
    even = waiting.length > 0 ? 1 : (queue[next]?.row ?? rows + 1) - row;
    if (!hasStitches(work, part, step) || !workRows(work, part, { step: step.id, rows: even })) return;
  }
  if (waiting[0] !== undefined) sayLate(work, step, waiting[0]);
  for (const due of waiting) shapeNow(work, part, { step, due });
}

function sayLate(work: GarmentWork, step: StepOf<"work">, { at, as }: Due): void {
  const edge = at === "left" ? "left" : "right";
  work.fault(
    step.id,
    `The rows end before the next one that starts at the ${edge} edge, where stitches are to be ${VERBS[as]}. Work 1 row more, or begin the shaping 1 row earlier.`,
  );
}

/** Whether there is anything to work; a fault, once a part, where there is not. */
export function hasStitches(work: GarmentWork, part: LivePart, step: { readonly id: string }): boolean {
  if (part.stitches > 0) return true;
  if (!part.isFaulty) work.fault(step.id, `There are no stitches left in “${part.id}” to work.`);
  part.isFaulty = true;
  return false;
}

/** Another fabric has other stitches: the part is as wide as they are, its middle where it was. */
export function setFabric(work: GarmentWork, part: LivePart, fabric: string): void {
  if (fabric === part.fabric) return;
  part.fabric = fabric;
  setWidth(part, part.stitches * stitchWidthCm(part, work.numbers.stitchCm(fabric)));
}

function duesOf(
  work: GarmentWork,
  part: LivePart,
  { step, shape, rows }: { step: StepOf<"work">; shape: StepShape; rows: number },
): Due[] {
  const optional = (number: StepNumber | undefined) => (number === undefined ? undefined : work.number(step, number));
  const { found, message } = shapingRows(
    {
      times: work.number(step, shape.times),
      every: optional(shape.every),
      everyOther: shape.everyOther,
      start: optional(shape.start),
    },
    rows,
  );
  if (message !== null) work.fault(step.id, message);
  const sign = shape.as === "decrease" || shape.as === "bind-off" ? -1 : 1;
  const stitches = sign * work.number(step, shape.stitches);
  const at = placeIn(work, part, { step, at: shape.at });
  const dues: Due[] = [];
  for (const { row, times } of found)
    for (const place of at === "both" ? BOTH : [at])
      dues.push({ row, as: shape.as, at: place, stitches: stitches * times });
  return dues;
}

/** Shapes where the next row starts at its edge: stitches are bound off and cast on there; all else is worked within the row. */
function shapeInTurn(work: GarmentWork, part: LivePart, { step, due }: { step: StepOf<"work">; due: Due }): boolean {
  const { as, at } = due;
  const isAtStart = (as === "bind-off" || as === "add") && (at === "left" || at === "right") && !isRound(part);
  if (isAtStart && at !== startOf(part)) return false;
  shapeNow(work, part, { step, due });
  return true;
}

/** The edge at which the next row starts: on the right side of the work it goes from right to left (common practice, no source). */
export function startOf({ nextSide }: Pick<LivePart, "nextSide">): "left" | "right" {
  return nextSide === "right" ? "right" : "left";
}

function shapeNow(work: GarmentWork, part: LivePart, { step, due }: { step: StepOf<"work">; due: Due }): void {
  const { as, at, stitches } = due;
  const changed = changeStitches(work, part, { step, at, stitches, verb: VERBS[as] });
  if ((as === "bind-off" || as === "add") && (at === "left" || at === "right"))
    noteAtEdge(part, at, { step: step.id, stitches: Math.abs(changed), held: 0 });
}

/** Says that a part in the round has no edges; true where it has. */
export function hasEdges(
  work: GarmentWork,
  part: LivePart,
  { step, stitches }: { step: { readonly id: string }; stitches: number },
): boolean {
  if (!isRound(part)) return true;
  work.fault(
    step.id,
    `“${part.id}” is worked in the round and has no left or right edge for ${withNoun(stitches, "stitch")}. Name a marker, or divide it first.`,
  );
  return false;
}
