import { indexAt } from "../../linear-algebra";
import type { Locations } from "./assignment-problem";
import { EqualCostMoves } from "./equal-cost-moves";
import type { Potentials } from "./potentials";

/**
 * Among equal solutions the one that `minCostAssignment` promises, found from any of them.
 *
 * The sets of rows that optimal solutions assign are the bases of a matroid, so the first set is reached by adding each
 * waiting row once, in order, in exchange for the latest row that it can replace: Edmonds (1971), Matroids and the greedy
 * algorithm (from memory).
 *
 * @param locations an optimal solution, proved by `potentials`; changed in place.
 */
export function breakTies(problem: Locations, potentials: Potentials, locations: Int32Array): void {
  const moves = new EqualCostMoves(problem, potentials, locations);
  const { rows, waiting } = problem;
  for (let row = 0; row < rows; row += 1) {
    if (indexAt(locations, row) === waiting) exchangeForLater(row, problem, moves);
  }
  for (let row = 0; row < rows; row += 1) {
    if (indexAt(locations, row) !== waiting) moveToFirstSize(row, problem, moves);
  }
}

/** Assigns a waiting row if a later row can take its place on the waiting list. */
function exchangeForLater(row: number, problem: Locations, moves: EqualCostMoves): void {
  const { waiting } = problem;
  const starts = sizesBefore(waiting).filter((size) => moves.isEquivalent(row, size));
  const before = chainsFrom(starts, { problem, moves, after: -1 });
  let end = -1;
  let latest = row;
  for (const size of sizesBefore(waiting)) {
    if (before[size] === undefined || moves.latestOf(size, waiting) <= latest) continue;
    end = size;
    latest = moves.latestOf(size, waiting);
  }
  if (end < 0) return;
  moves.move(latest, waiting);
  moveChain(before, { row, end, problem, moves });
}

/** Moves a row to the first size with equal cost, without moving earlier rows. */
function moveToFirstSize(row: number, problem: Locations, moves: EqualCostMoves): void {
  const stands = indexAt(moves.locations, row);
  for (const size of sizesBefore(stands)) {
    if (!moves.isEquivalent(row, size)) continue;
    const before = chainsFrom([size], { problem, moves, after: row });
    if (before[stands] === undefined) continue;
    moveChain(before, { row, end: stands, problem, moves });
    return;
  }
}

function sizesBefore(end: number): number[] {
  return Array.from({ length: end }, (_, size) => size);
}

const START = -1;

/**
 * Sizes reachable by a chain of equal-cost moves, each with the previous size on the chain. A chain may include a spot
 * that one size gains and another gives up, represented by the waiting list.
 *
 * @param after only rows later than this one move.
 */
function chainsFrom(
  starts: readonly number[],
  { problem, moves, after }: { problem: Locations; moves: EqualCostMoves; after: number },
): (number | undefined)[] {
  const { waiting } = problem;
  const before: (number | undefined)[] = Array.from({ length: waiting + 1 });
  for (const start of starts) before[start] = START;
  const open = [...starts];
  for (let from = open.pop(); from !== undefined; from = open.pop()) {
    for (let to = 0; to <= waiting; to += 1) {
      if (before[to] !== undefined || !isStep(from, to)) continue;
      before[to] = from;
      open.push(to);
    }
  }
  return before;

  function isStep(from: number, to: number): boolean {
    if (to === waiting) return moves.mayGrow(from);
    return from === waiting ? moves.mayShrink(to) : moves.latestOf(from, to) > after;
  }
}

/** Moves the rows of a chain starting from its end, then the row at its beginning. */
function moveChain(
  before: readonly (number | undefined)[],
  { row, end, problem, moves }: { row: number; end: number; problem: Locations; moves: EqualCostMoves },
): void {
  let to = end;
  for (let from = before[to] ?? START; from !== START; from = before[to] ?? START) {
    if (from !== problem.waiting && to !== problem.waiting) moves.move(moves.latestOf(from, to), to);
    to = from;
  }
  moves.move(row, to);
}
