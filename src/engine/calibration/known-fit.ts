import { gaussHermite, moveGains, movedTables, sizeRanges, sumOver, type RatedEase } from "../fit";
import { indexAt } from "../linear-algebra";
import {
  EVEN_THRESHOLDS,
  FIT_AREAS,
  PREFERS_STEPS,
  STEP_IN_LOGITS,
  TESTER_SPREAD,
  type PlantedFit,
} from "./planted-fit";

const POINTS = 9;

/**
 * The likelihood ratio test of a call's answers that is told how they spread, how testers differ, how much ease and liking
 * move them, and how large a departure is; only where it is, and which way, it has to find.
 *
 * @returns logarithm of how much likelier the answers are with a step in the likeliest sizes of any area.
 */
export function knownStatistic({ call, slopes }: PlantedFit, rated: readonly RatedEase[]): number {
  const sizes = call.pattern.sizes.length;
  const starts = rated.flatMap(({ tester }, index) => (rated[index - 1]?.tester === tester ? [] : [index]));
  const tables = movedTables(
    {
      thresholds: Float64Array.from(EVEN_THRESHOLDS, (threshold) => threshold * STEP_IN_LOGITS),
      values: Float64Array.from(
        rated,
        ({ x, area, prefers }) => STEP_IN_LOGITS * ((slopes[area] ?? 0) * x - PREFERS_STEPS * prefers),
      ),
      ...{ personSd: TESTER_SPREAD * STEP_IN_LOGITS, starts: Int32Array.from([...starts, rated.length]) },
    },
    gaussHermite(POINTS),
    STEP_IN_LOGITS,
  );
  const cells = Int32Array.from(rated, ({ area, size }) => area * sizes + size);
  const count = FIT_AREAS.length * sizes;
  const gains = { tighter: new Float64Array(count), looser: new Float64Array(count) };
  moveGains(tables, { answers: Int32Array.from(rated, ({ scale }) => scale + 2), cells }, gains);
  const counts = new Int32Array(count);
  cells.forEach((cell) => {
    counts[cell] = indexAt(counts, cell) + 1;
  });
  return sizeRanges(counts, sizes).reduce(
    (largest, range) => Math.max(largest, sumOver(range, gains.tighter, sizes), sumOver(range, gains.looser, sizes)),
    0,
  );
}
