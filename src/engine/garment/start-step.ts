import type { StepOf } from "../pattern";
import { rateText, withNoun } from "../shaping";
import { edgeUnits } from "./edges";
import type { GarmentWork } from "./garment-work";
import { centredColumns, endsOf, makePart, stitchWidthCm } from "./live-part";
import { numberText } from "./size-numbers";
import { workRow } from "./work-row";

/**
 * Starts a part: cast on, chained or picked up, its middle on the piece's centre line. Neither counts as a row; a foundation
 * row does. The first row is a right-side row, after a pick-up from the right side a wrong-side row (common practice, no source).
 */
export function startStep(work: GarmentWork, step: StepOf<"start">, copy: number): void {
  const { part: id } = step.in;
  const piece = work.piece(id);
  if (piece === undefined)
    return work.fault(step.id, `No piece has a part “${id}”. List it in the parts of the piece that it belongs to.`);
  if (copy > piece.made)
    return work.fault(
      step.id,
      `“${piece.label}” is made ${piece.made === 1 ? "once" : `${piece.made} times`}, and copy ${copy} is to be started.`,
    );
  if (work.part(id, copy) !== undefined)
    return work.fault(step.id, `“${id}” is started twice. Give the second part another name.`);
  const stitches = work.number(step, step.stitches);
  const { fabric } = piece;
  const widthCm = stitches * stitchWidthCm(step, work.numbers.stitchCm(fabric));
  const part = makePart({
    id,
    copy,
    piece,
    worked: step.worked,
    fabric,
    stitches,
    step: step.id,
    columns: centredColumns(widthCm),
    nextSide: step.how === "pick-up" && step.worked !== "round" && step.worked !== "spiral" ? "wrong" : "right",
  });
  const lengthCm = stitches * work.numbers.stitchCm(fabric);
  const { from, to } = endsOf(part);
  part.bottom.push({ step: step.id, rows: 0, stitches, held: 0, lengthCm, from, to });
  work.setPart(part);
  if (step.how === "pick-up") checkPickUp(work, { step, copy, stitches });
  if (step.how === "foundation" && stitches > 0) workRow(work, part, step.id);
}

type Rate = readonly [stitches: number, of: number];

/**
 * Stitches picked up along edges: row ends at the step's rate, bound-off, cast-on and held stitches one for one where no
 * rate of theirs is given. As many as come nearest, each edge and kind for itself, are right.
 *
 * @see docs/method.md#shaping.
 */
function checkPickUp(
  work: GarmentWork,
  { step, copy, stitches }: { step: StepOf<"start">; copy: number; stitches: number },
): void {
  const { along = [], rate, rateBoundOff = ONE_FOR_ONE, rateHeld = ONE_FOR_ONE } = step;
  if (along.length === 0)
    return work.fault(step.id, "It does not say along which edges stitches are picked up. Name them.");
  let exact = 0;
  let slack = 0;
  const rows: number[] = [];
  for (const ref of along) {
    const units = edgeUnits(work, ref, { step, copy });
    if (units === null || (units.rows > 0 && rate === undefined)) return;
    rows.push(units.rows);
    for (const [number, of] of [
      [units.rows, rate ?? ONE_FOR_ONE],
      [units.stitches, rateBoundOff],
      [units.held, rateHeld],
    ] as const) {
      exact += number * (of[0] / of[1]);
      slack += number === 0 ? 0 : Math.floor(of[1] / 2) / of[1];
    }
  }
  if (Math.abs(stitches - exact) <= slack + 1e-9) return;
  const sum = rows.reduce((total, number) => total + number, 0);
  const says =
    rate === undefined || sum === 0
      ? ""
      : ` (${rateText({ stitches: rate[0], rows: rate[1] })} along ${withNoun(sum, "row")})`;
  work.fault(
    step.id,
    `${withNoun(stitches, "stitch")} are to be picked up, and the edges give ${numberText(exact)}${says}. Pick up ${Math.round(exact)}, or change the rate or the edge.`,
  );
}

const ONE_FOR_ONE: Rate = [1, 1];
