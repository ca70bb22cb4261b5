import type { Garment, StepOf } from "../pattern";
import { difference, sumOf, times } from "./linear-number";
import { SEAM_WITHIN } from "./seam-within";
import { isNothing, NOTHING, type Amount, type StitchRun } from "./stitch-run";

/** Of a share, as a fraction of whole numbers. */
const PARTS = 10_000;
const ONE_FOR_ONE = [1, 1] as const;

/** That as many stitches are picked up as come nearest to what the edges give at the step's rates. */
export function pickUp(
  run: StitchRun,
  step: StepOf<"start">,
  { copy, stitches }: { copy: number; stitches: Amount },
): void {
  const { along = [], rate, rateBoundOff = ONE_FOR_ONE, rateHeld = ONE_FOR_ONE } = step;
  if (along.length === 0) return;
  let exact: Amount = NOTHING;
  let slack = 0;
  for (const ref of along) {
    const edge = run.edge(ref, step, copy);
    if (edge === null || (!isNothing(edge.rows) && rate === undefined)) return;
    for (const [units, [picked, of]] of [
      [edge.rows, rate ?? ONE_FOR_ONE],
      [edge.stitches, rateBoundOff],
      [edge.held, rateHeld],
    ] as const) {
      if (isNothing(units)) continue;
      exact = sumOf(exact, times(units, picked, of));
      slack += Math.floor(of / 2) / of;
    }
  }
  if (exact === null) return;
  const message = `as many stitches are picked up as the edge gives, ${run.text(exact)}`;
  run.ask(step, difference(stitches, exact), { min: -slack, max: slack }, message);
}

/** That two level edges of one fabric are as long as each other, but for what can be eased in. */
export function askAlike(run: StitchRun, { a, b, within = SEAM_WITHIN }: Garment["seams"][number]): void {
  const [one, other] = [run.topEdge(a), run.topEdge(b)];
  if (one === null || other === null || one.fabric !== other.fabric) return;
  const [kept, of] = [Math.round((1 - within) * PARTS), PARTS];
  for (const [shorter, longer] of [
    [one.stitches, other.stitches],
    [other.stitches, one.stitches],
  ])
    if (shorter && longer) {
      const message = `${run.text(shorter)} and ${run.text(longer)} stitches are sewn together, and must be as many to ${within * 100} %`;
      run.ask(null, difference(shorter, times(longer, kept, of)), { min: 0, max: Infinity }, message);
    }
}
