import type { GarmentStep, PatternDocument } from "../pattern";
import { withNoun } from "../shaping";
import { divideStep } from "./divide-step";
import { edgeStep } from "./edge-step";
import { edgeUnits } from "./edges";
import { endStep } from "./end-step";
import { GarmentWork } from "./garment-work";
import { joinStep } from "./join-step";
import type { LivePart } from "./live-part";
import { markStep, unmarkStep } from "./mark-step";
import { SEAM_WITHIN } from "./seam-within";
import { sectionStep } from "./section-step";
import { shortRowsStep } from "./short-rows-step";
import { startStep } from "./start-step";
import { workStep } from "./work-step";

/**
 * Works a garment in one size, row by row, as its steps say.
 *
 * What cannot be worked is a fault with its step, and the rest is worked all the same: as many stitches as there are, shaping
 * that has no row in the last one, a join without what is missing. A document of any size ends, because rows are limited.
 *
 * @param pattern a parsed pattern of format 2 whose counts all have numbers.
 * @param size id of one of its sizes.
 * @param note is called after each step, once a copy.
 * @returns rows and blocks of fabric of every part in the order in which they are worked, and the faults.
 * @throws {RangeError} on a missing number, which the document's checks rule out.
 * @see docs/method.md#working-a-garment.
 */
export function workGarment(
  pattern: PatternDocument,
  size: string,
  note?: (work: GarmentWork, step: GarmentStep, copy: number) => void,
): GarmentWork {
  const work = new GarmentWork(pattern, size);
  const { steps } = pattern.garment;
  const { order, waiting } = work.plan;
  for (const index of waiting) {
    const step = steps[index];
    if (step !== undefined)
      work.fault(step.id, "It waits for a step that itself waits for this one. Check which parts and edges they need.");
  }
  for (const index of order) {
    const step = steps[index];
    if (work.hasTooManyRows) return work;
    if (step === undefined) continue;
    for (const copy of work.copiesOfStep(step)) {
      runStep(work, step, copy);
      note?.(work, step, copy);
    }
  }
  if (work.hasTooManyRows) return work;
  for (const part of work.parts.values()) checkEnd(work, part);
  pattern.garment.seams.forEach(({ a, b, within = SEAM_WITHIN }, seam) => {
    const at = { step: null, copy: 1, seam };
    const [one, other] = [edgeUnits(work, a, at), edgeUnits(work, b, at)];
    if (one === null || other === null) return;
    const longerCm = Math.max(one.lengthCm, other.lengthCm);
    if (Math.abs(one.lengthCm - other.lengthCm) <= within * longerCm + 1e-9) return;
    const lengths = `“${a.edge}” is ${cmText(one.lengthCm)} long and “${b.edge}” ${cmText(other.lengthCm)}`;
    const differ = Math.abs(one.lengthCm - other.lengthCm) / longerCm;
    const message = `${lengths}; that is ${percentText(differ)} apart, and ${percentText(within)} can be eased in. Make them more alike, or allow more.`;
    work.fault(null, message, seam);
  });
  return work;
}

function runStep(work: GarmentWork, step: GarmentStep, copy: number): void {
  if (step.do === "start") return startStep(work, step, copy);
  if (step.do === "join") return joinStep(work, step, copy);
  if (step.do === "end" && isEndedWithOther(work, step, copy)) return;
  const part = work.usablePart(step, step.in.part, copy);
  if (part === undefined) return;
  part.state = "live";
  part.lastStep = step.id;
  workPart(work, part, step);
}

function workPart(work: GarmentWork, part: LivePart, step: Exclude<GarmentStep, { do: "start" | "join" }>): void {
  switch (step.do) {
    case "work":
      return workStep(work, part, step);
    case "section":
      return sectionStep(work, part, step);
    case "add":
    case "bind-off":
    case "hold":
    case "leave":
      return edgeStep(work, part, step);
    case "short-rows":
      return shortRowsStep(work, part, step);
    case "mark":
      return markStep(work, part, step);
    case "unmark":
      return unmarkStep(work, part, step);
    case "divide":
      return divideStep(work, part, step);
    case "end":
      return endStep(work, part, step);
  }
}

/** Of two parts that are worked together, each may say so. */
function isEndedWithOther(work: GarmentWork, step: Extract<GarmentStep, { do: "end" }>, copy: number): boolean {
  if (step.with === undefined) return false;
  const part = work.part(step.in.part, copy);
  const other = work.part(step.with.part, work.copyOf(step.with, step, copy));
  return part?.state === "ended" && other !== undefined && part.lastStep === other.lastStep;
}

function checkEnd(work: GarmentWork, part: LivePart): void {
  if (part.state !== "live" || part.stitches === 0) return;
  const are = `${withNoun(part.stitches, "stitch")} of “${part.id}” ${part.stitches === 1 ? "is" : "are"} still live at the end.`;
  work.fault(part.lastStep, `${are} Bind them off, hold them, or join or graft them to others.`);
}

function cmText(cm: number): string {
  return `${cm.toFixed(1)} cm`;
}

function percentText(share: number): string {
  return `${Math.round(share * 1000) / 10} %`;
}
