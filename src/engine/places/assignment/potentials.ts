import { at, indexAt } from "../../linear-algebra";
import { rankOfNextPlace, type Locations } from "./assignment-problem";

/** Dual prices of the locations, by rank first and then by cost, under which no move is an improvement. */
export interface Potentials {
  readonly ranks: Float64Array;
  readonly costs: Float64Array;
}

interface Arc {
  readonly from: number;
  readonly to: number;
  readonly rank: number;
  readonly cost: number;
}

/**
 * Dual prices that prove a solution optimal: under them no row has a cheaper location and no spot is worth more than it
 * costs. They exist if and only if no cycle of moves improves the solution.
 *
 * @param locations the location of each row.
 * @returns null if some cycle of moves improves the solution.
 * @see Klein (1967) for the cycles, Bellman (1958) for the prices (from memory).
 */
export function potentialsOf(problem: Locations, locations: Int32Array): Potentials | null {
  const nodes = problem.waiting + 1;
  const potentials = { ranks: new Float64Array(nodes), costs: new Float64Array(nodes) };
  const arcs = [...rowArcs(problem, locations), ...placeArcs(problem, locations)];
  for (let round = 0; round <= nodes; round += 1) {
    if (arcs.filter((arc) => lower(potentials, arc)).length === 0) return potentials;
  }
  return null;
}

/** Relaxes an arc. @returns whether the price at its end was lowered. */
function lower({ ranks, costs }: Potentials, { from, to, rank, cost }: Arc): boolean {
  const reachedRank = at(ranks, from) + rank;
  const reachedCost = at(costs, from) + cost;
  const isLower = reachedRank < at(ranks, to) || (reachedRank === at(ranks, to) && reachedCost < at(costs, to));
  if (!isLower) return false;
  ranks[to] = reachedRank;
  costs[to] = reachedCost;
  return true;
}

/** An arc between each two locations for the row with the cheapest move. */
function rowArcs({ rows, waiting, costs }: Locations, locations: Int32Array): Arc[] {
  const width = waiting + 1;
  const cheapest = new Float64Array(width * width).fill(Number.POSITIVE_INFINITY);
  for (let row = 0; row < rows; row += 1) {
    const from = indexAt(locations, row);
    const stays = at(costs, row * width + from);
    for (let to = 0; to < width; to += 1) {
      const move = at(costs, row * width + to) - stays;
      if (to !== from && move < at(cheapest, from * width + to)) cheapest[from * width + to] = move;
    }
  }
  return [...cheapest].flatMap((cost, index) =>
    Number.isFinite(cost) ? [{ from: Math.floor(index / width), to: index % width, rank: 0, cost }] : [],
  );
}

/** Arcs for chains of moves that end in a size with an open spot, and begin in one that gives a spot up. */
function placeArcs(problem: Locations, locations: Int32Array): Arc[] {
  const { waiting } = problem;
  const loads = loadsOf(problem, locations);
  return problem.sizes.flatMap((_, size) => {
    const load = indexAt(loads, size);
    const gained = rankOfNextPlace(problem, size, load);
    const ends = gained > 0 ? [{ from: size, to: waiting, rank: -gained, cost: 0 }] : [];
    const lost = rankOfNextPlace(problem, size, load - 1);
    return load > 0 ? [...ends, { from: waiting, to: size, rank: lost, cost: 0 }] : ends;
  });
}

/** Number of rows in each location. */
export function loadsOf({ waiting }: Locations, locations: Int32Array): Int32Array {
  const loads = new Int32Array(waiting + 1);
  for (const location of locations) loads[location] = indexAt(loads, location) + 1;
  return loads;
}
