import { at, indexAt } from "../../linear-algebra";
import { locationsOf, type AssignmentProblem, type Locations } from "./assignment-problem";
import { fillPlaces } from "./fill-places";
import { loadsOf, potentialsOf } from "./potentials";
import { settleTies } from "./settle-ties";

/**
 * Sends rows to sizes, each row to at most one and to each size no more than `most`, so that in this order: as many of
 * the `least` places are filled as can be, as many places as can be, the sum of the costs is smallest; and of equal
 * answers the one that places earlier rows (it places the first row by which the sets of placed rows differ), then the
 * one in which the first row that stands elsewhere stands in the earlier size.
 *
 * Exact: costs are whole numbers, whose sums doubles hold. Before it is believed, the answer is checked by prices of
 * the sizes that prove it (linear programming duality), apart from how it was found.
 *
 * @param problem costs by row and size; `slack` says from which difference on answers are not equal. Answers that are
 *   equal to within the rounding of costs need a slack of at least the number of sizes + 1.
 * @returns by row the index of its size, −1 where it has none.
 * @throws {RangeError} for costs that are not whole, or too large to be added exactly; {Error} where the check fails,
 *   which would be a fault of this program.
 */
export function assignAtLeastCost(problem: AssignmentProblem): Int32Array {
  const all = locationsOf(problem);
  const locations = fillPlaces(all);
  const potentials = potentialsOf(all, locations);
  if (potentials === null) throw new Error("the places found are not the best");
  const found = checkedTotals(all, locations);
  settleTies(all, potentials, locations);
  const settled = checkedTotals(all, locations);
  if (settled.rank !== found.rank || settled.cost > found.cost + all.slack * all.rows)
    throw new Error("the places settled are not as good as those found");
  return locations.map((location) => (location === all.waiting ? -1 : location));
}

/** @throws {Error} where a row stands where it may not, or a size holds too many. */
function checkedTotals(all: Locations, locations: Int32Array): { readonly rank: number; readonly cost: number } {
  const { rows, sizes, waiting, costs } = all;
  const loads = loadsOf(all, locations);
  let rank = 0;
  sizes.forEach(({ least, most }, size) => {
    const load = indexAt(loads, size);
    if (load > most) throw new Error("a size holds more than it may");
    rank += load + (rows + 1) * Math.min(load, least);
  });
  let cost = 0;
  locations.forEach((location, row) => {
    cost += at(costs, row * (waiting + 1) + location);
  });
  if (!Number.isFinite(cost)) throw new Error("a row stands where it may not");
  return { rank, cost };
}
