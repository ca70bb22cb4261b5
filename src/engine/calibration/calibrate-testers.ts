import { gaps, isSettled, testersNeeded, type Cell } from "../gaps";
import type { PatternDocument } from "../pattern";
import { seededRandom } from "../seeded-random";
import { crochetedCardigan, knittedPullover } from "../simulation";
import { plantedCall, type Design, type PlantedCall } from "./planted-call";
import { withMoreTesters } from "./with-more-testers";
import { Tally } from "./tally";

/** Cells of a call whose number of testers is tried out, at most. */
const CELLS_PER_CALL = 1;

/**
 * How often a cell is settled once as many testers as it was said to take have come to its size.
 *
 * @param seed of the first call; each call has its own.
 * @returns trials named `settled` and `settled by N`, one a cell with reports whose verdict is open and for which a number
 *   is told; `told` is the share of open cells that have one.
 * @see docs/method.md#calibration.
 */
export function calibrateTesters(given: {
  readonly design: Design;
  readonly calls: number;
  readonly seed: number;
}): Tally {
  const garments = [knittedPullover(), crochetedCardigan()];
  const tally = new Tally();
  for (let call = 0; call < given.calls; call += 1) {
    const pattern = garments[call % garments.length];
    if (pattern === undefined) continue;
    const seed = given.seed + 100 * call;
    const planted = plantedCall({ ...given, pattern, fault: "drawn", entryErrorShare: 0, seed });
    const open = gaps(planted.call).cells.filter(({ verdict, reports }) => reports > 0 && !isSettled(verdict));
    open.forEach(({ testersToSettle }) => tally.add("told", testersToSettle !== null));
    const told = open.filter(({ testersToSettle }) => testersToSettle !== null);
    chosen(told, seed + 2).forEach((cell, index) => tryOut(tally, planted, { cell, seed: seed + 10 + index }));
  }
  return tally;
}

function tryOut(tally: Tally, planted: PlantedCall, { cell, seed }: { cell: Cell; seed: number }): void {
  const { size, measurement, testersToSettle } = cell;
  const { call } = withMoreTesters(planted, planted.choices, {
    size,
    testers: testersToSettle ?? 0,
    seed,
    named: "more",
  });
  const { cells } = gaps(call);
  const after = cells.find((found) => found.size === size && found.measurement === measurement);
  tally.add("settled", isSettled(after?.verdict ?? null));
  tally.add(`settled by ${testersToSettle}`, isSettled(after?.verdict ?? null));
}

/** Some of the cells, each with the same chance. */
function chosen(cells: readonly Cell[], seed: number): Cell[] {
  const random = seededRandom(seed);
  return cells
    .map((cell) => ({ cell, order: random.uniform() }))
    .toSorted((left, right) => left.order - right.order)
    .slice(0, CELLS_PER_CALL)
    .map(({ cell }) => cell);
}

/**
 * The share of cells that are settled in calls with as many testers in each size as `testersNeeded` says beforehand.
 *
 * @returns trials named `settled`, one a cell.
 */
export function calibrateNeeded(given: {
  readonly pattern: PatternDocument;
  readonly calls: number;
  readonly seed: number;
}): Tally {
  const tally = new Tally();
  const needed = testersNeeded(given.pattern);
  if (needed === null) return tally;
  for (let call = 0; call < given.calls; call += 1) {
    const seed = given.seed + 2 * call;
    const planted = plantedCall({ ...given, design: { each: needed }, fault: "drawn", entryErrorShare: 0, seed });
    for (const { verdict } of gaps(planted.call).cells) tally.add("settled", isSettled(verdict));
  }
  return tally;
}
