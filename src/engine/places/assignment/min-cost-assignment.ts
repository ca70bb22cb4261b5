import { at, indexAt } from "../../linear-algebra";
import { locationsOf, type AssignmentProblem, type Locations } from "./assignment-problem";
import { shortestPathAssignment } from "./shortest-path-assignment";
import { loadsOf, potentialsOf } from "./potentials";
import { breakTies } from "./break-ties";

/**
 * Assigns rows to sizes, each row to at most one and each size up to its capacity, so that in this order: as many of
 * the minimum spots are filled as possible, as many of them in sizes that come first, as many spots as possible, the sum of the costs is smallest; and among equal
 * solutions the one that assigns earlier rows (it places the first row by which the sets of placed rows differ), then the
 * one in which the first row that differs has the earlier size.
 *
 * Exact: costs are whole numbers, whose sums are exact in doubles. The solution is verified with dual prices of
 * the sizes (linear programming duality), independently of how it was found.
 *
 * @param problem costs by row and size; solutions that differ by at most `slack` are equal. Solutions that are
 *   equal to within the rounding of costs need a slack of at least the number of sizes + 1.
 * @returns by row the index of its size, −1 if it has none.
 * @throws {RangeError} for costs that are not whole, or too large to be added exactly; {Error} if the verification fails,
 *   which would be a bug.
 */
export function minCostAssignment(problem: AssignmentProblem): Int32Array {
  const all = locationsOf(problem);
  const found = shortestPathAssignment(all);
  const potentials = potentialsOf(all, found);
  if (potentials === null) throw new Error("the places found are not the best");
  const tieBroken = found.slice();
  breakTies(all, potentials, tieBroken);
  if (
    checkedRank(all, tieBroken) !== checkedRank(all, found) ||
    costDifference(all, found, tieBroken) > all.slack * all.rows
  )
    throw new Error("the places settled are not as good as those found");
  return tieBroken.map((location) => (location === all.waiting ? -1 : location));
}

/**
 * Total rank of the filled spots.
 *
 * @throws {Error} if a row has a location that is not allowed, or a size exceeds its capacity.
 */
function checkedRank(all: Locations, locations: Int32Array): number {
  const { rows, sizes, waiting, costs } = all;
  if (locations.some((location, row) => !Number.isFinite(at(costs, row * (waiting + 1) + location))))
    throw new Error("a row stands where it may not");
  const loads = loadsOf(all, locations);
  return sizes.reduce((rank, { min, capacity, isFirst }, size) => {
    const load = indexAt(loads, size);
    if (load > capacity) throw new Error("a size holds more than it may");
    const base = rows + 2;
    const perMin = base * base - 1 + (isFirst === true ? base : 0);
    return rank + load + perMin * Math.min(load, min);
  }, 0);
}

/** Difference of the costs of two solutions, summed row by row: the totals are too large to be exact. */
function costDifference({ waiting, costs }: Locations, one: Int32Array, other: Int32Array): number {
  const costOf = (location: number, row: number) => at(costs, row * (waiting + 1) + location);
  return one.reduce((sum, location, row) => sum + costOf(indexAt(other, row), row) - costOf(location, row), 0);
}
