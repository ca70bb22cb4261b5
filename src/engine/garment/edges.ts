import type { EdgeRef, GarmentStep } from "../pattern";
import { partKey, type GarmentWork } from "./garment-work";
import { placeOf } from "./frame";
import type { EdgeRun, LivePart, Spot } from "./live-part";

/** How much of each kind lies along an edge, and how long it is. */
export type EdgeUnits = Pick<EdgeRun, "rows" | "stitches" | "held" | "lengthCm">;

/**
 * What lies along an edge, or along the stretch of it between two shares of its length.
 *
 * @param at the step, or the seam by index, which needs it, and the copy that it is worked in.
 * @returns units, whole, and length in cm; null, and a fault, where the edge has not been worked.
 */
export function edgeUnits(
  work: GarmentWork,
  { edge, copy, from = 0, to = 1 }: EdgeRef,
  at: { readonly step: GarmentStep | null; readonly copy: number; readonly seam?: number },
): EdgeUnits | null {
  const runs = edgeRuns(work, edge, copy ?? copyOfEdge(work, edge, at));
  if (runs === null) {
    work.fault(
      at.step?.id ?? null,
      `The edge “${edge}” is not worked in this garment. Name one that is.`,
      at.seam ?? null,
    );
    return null;
  }
  const totalCm = runs.reduce((sum, { lengthCm }) => sum + lengthCm, 0);
  const stretch = { fromCm: from * totalCm, toCm: to * totalCm };
  let passedCm = 0;
  const sum = { rows: 0, stitches: 0, held: 0, lengthCm: 0 };
  for (const run of runs) {
    const share = shareWithin(run, passedCm, stretch);
    passedCm += run.lengthCm;
    sum.rows += share * run.rows;
    sum.stitches += share * run.stitches;
    sum.held += share * run.held;
    sum.lengthCm += share * run.lengthCm;
  }
  return {
    ...{ rows: Math.round(sum.rows), stitches: Math.round(sum.stitches), held: Math.round(sum.held) },
    lengthCm: sum.lengthCm,
  };
}

function shareWithin(
  { lengthCm }: EdgeRun,
  passedCm: number,
  { fromCm, toCm }: { readonly fromCm: number; readonly toCm: number },
): number {
  if (lengthCm === 0) return passedCm >= fromCm && passedCm <= toCm ? 1 : 0;
  const insideCm = Math.min(passedCm + lengthCm, toCm) - Math.max(passedCm, fromCm);
  return Math.max(0, insideCm) / lengthCm;
}

/**
 * The line of an edge: where its runs begin and end, from the bottom up or from left to right.
 *
 * @param ref an edge; without a copy that of the first.
 * @returns its points in the coordinates of its piece, cm; null where it has not been worked.
 */
export function edgeLine(work: GarmentWork, { edge, copy = 1 }: EdgeRef): Spot[] | null {
  const runs = edgeRuns(work, edge, copy);
  const part = work.part(work.plan.edgeParts.get(edge) ?? "", copy);
  const [first] = runs ?? [];
  if (runs === null || part === undefined || first === undefined) return null;
  const { xCm, yCm } = placeOf(part.frame);
  return [first.from, ...runs.map(({ to }) => to)].map((spot) => ({ xCm: spot.xCm + xCm, yCm: spot.yCm + yCm }));
}

/** Of the step's own piece its own copy, else the first. */
function copyOfEdge(
  work: GarmentWork,
  edge: string,
  { step, copy }: { readonly step: GarmentStep | null; readonly copy: number },
): number {
  const part = work.plan.edgeParts.get(edge) ?? "";
  return step === null ? 1 : work.copyOf({ part }, step, copy);
}

function edgeRuns(work: GarmentWork, id: string, copy: number): readonly EdgeRun[] | null {
  const made = work.madeEdges.get(partKey(id, copy));
  if (made !== undefined) return made;
  const edge = work.plan.listedEdges.get(id);
  const part = edge && work.part(edge.part, copy);
  if (edge === undefined || part === undefined) return null;
  const runs = runsOfSide(work, part, edge.side);
  if (edge.steps === undefined) return runs.length > 0 ? runs : null;
  const [from, to] = edge.steps;
  const first = runs.findIndex(({ step }) => step === from);
  const last = runs.findLastIndex(({ step }) => step === to);
  return first < 0 || last < first ? null : runs.slice(first, last + 1);
}

function runsOfSide(work: GarmentWork, part: LivePart, side: "left" | "right" | "top" | "bottom"): readonly EdgeRun[] {
  if (side === "top" || side === "bottom") return part[side];
  const { runs, since, end } = part.sides[part.isMirrored ? (side === "left" ? "right" : "left") : side];
  if (since.stitches + since.held === 0) return runs;
  const lengthCm = (since.stitches + since.held) * work.numbers.stitchCm(part.fabric);
  return [...runs, { ...since, rows: 0, lengthCm, from: end, to: end }];
}
