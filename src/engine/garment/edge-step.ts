import type { StepOf } from "../pattern";
import { changeStitches, noteAtEdge, placeIn, type Place, type Side } from "./change-stitches";
import type { GarmentWork } from "./garment-work";
import { makePart, type EdgeRun, type LivePart } from "./live-part";
import { topOf } from "./profile";
import { hasEdges, startOf } from "./work-step";
import { workRow } from "./work-row";

type EdgeStep = StepOf<"add" | "bind-off" | "hold" | "leave">;

const VERBS = { add: "added", "bind-off": "bound off", hold: "put on hold", leave: "left unworked" } as const;

/**
 * Adds, binds off, holds or leaves stitches so many times. At an edge this falls at the start of the next row that starts
 * there (leaving: at the end of one that ends there), which is worked, as are rows in between; of both edges, that one first
 * which the next row starts at. Right and wrong side are kept, so that two edges are one row apart. Elsewhere it falls within the
 * next row, which is left to the next step.
 */
export function edgeStep(work: GarmentWork, part: LivePart, step: EdgeStep): void {
  const each = work.number(step, step.each);
  const times = step.times === undefined ? 1 : work.number(step, step.times);
  if (each === 0 || times === 0) return;
  const at = placeIn(work, part, { step, at: step.at });
  const isAtEdge = at === "left" || at === "right" || at === "both";
  if (isAtEdge && hasEdges(work, part, { step, stitches: each })) return atEdges(work, part, { step, at, each, times });
  if (at === "centre" && step.do !== "add" && part.worked === "flat")
    return work.fault(
      step.id,
      `What is ${VERBS[step.do]} at the centre leaves two sides. Divide “${part.id}” into three parts, end or hold the middle one, and work each side apart.`,
    );
  for (let nth = 0; nth < times; nth += 1) {
    if (nth > 0 && !workRow(work, part, step.id)) return;
    change(work, part, { step, at, each });
    if (part.stitches === 0) return;
  }
}

function atEdges(
  work: GarmentWork,
  part: LivePart,
  { step, at, each, times }: { step: EdgeStep; at: Side | "both"; each: number; times: number },
): void {
  const left = { left: at === "right" ? 0 : times, right: at === "left" ? 0 : times };
  while (left.left + left.right > 0) {
    const side = step.do === "leave" ? endOf(part) : startOf(part);
    if (left[side] > 0) {
      left[side] -= 1;
      change(work, part, { step, at: side, each });
    }
    if (part.stitches === 0 || !workRow(work, part, step.id)) {
      if (left.left + left.right > 0 && part.stitches === 0) change(work, part, { step, at: side, each });
      return;
    }
  }
}

function endOf(part: LivePart): Side {
  return startOf(part) === "right" ? "left" : "right";
}

function change(
  work: GarmentWork,
  part: LivePart,
  { step, at, each }: { step: EdgeStep; at: Place; each: number },
): void {
  const before = { leftCm: part.leftCm, rightCm: part.rightCm };
  const sign = step.do === "add" ? 1 : -1;
  const changed = Math.abs(changeStitches(work, part, { step, at, stitches: sign * each, verb: VERBS[step.do] }));
  const isHeld = step.do === "hold" || (step.do === "leave" && step.to !== undefined);
  if (at === "left" || at === "right")
    noteAtEdge(part, at, { step: step.id, stitches: isHeld ? 0 : changed, held: isHeld ? changed : 0 });
  if (step.to === undefined || changed === 0) return;
  if (isHeld) return hold(work, part, { step, to: step.to, stitches: changed, before });
  const lengthCm = changed * work.numbers.stitchCm(part.fabric);
  const run = { step: step.id, rows: 0, stitches: changed, held: 0, lengthCm };
  work.addToEdge(step.to, part.copy, { ...run, ...changedAt(part, before) });
}

/** Where stitches were added or taken: between the part's edges before and after. */
function changedAt(part: LivePart, before: { leftCm: number; rightCm: number }): Pick<EdgeRun, "from" | "to"> {
  const yCm = topOf(part.columns);
  const isLeft = part.leftCm !== before.leftCm;
  const [one, other] = isLeft ? [before.leftCm, part.leftCm] : [part.rightCm, before.rightCm];
  return { from: { xCm: Math.min(one, other), yCm }, to: { xCm: Math.max(one, other), yCm } };
}

/** Held stitches are a part of their own; more of them come to those that are already held. */
function hold(
  work: GarmentWork,
  part: LivePart,
  given: { step: EdgeStep; to: string; stitches: number; before: { leftCm: number; rightCm: number } },
): void {
  const { step, to, stitches, before } = given;
  const held = work.part(to, part.copy);
  if (held !== undefined && held.state === "held") {
    held.stitches += stitches;
    return;
  }
  const topCm = topOf(part.columns);
  const [leftCm, rightCm] = part.leftCm > before.leftCm ? [before.leftCm, part.leftCm] : [part.rightCm, before.rightCm];
  const { copy, piece, fabric, frame, row, nextSide } = part;
  const made = makePart({
    ...{ id: to, copy, piece, worked: "flat", fabric, frame, row, nextSide, stitches, step: step.id },
    columns: [{ leftCm, rightCm, topCm }],
  });
  made.state = "held";
  work.setPart(made);
}
