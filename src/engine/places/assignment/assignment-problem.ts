/** How many rows a size should have and may have. */
interface SizeSpots {
  readonly min: number;
  readonly capacity: number;
  /** Of as many minimum spots, those of these sizes are filled rather than those of others. */
  readonly isFirst?: boolean;
}

/** Rows that are each assigned to at most one size; see `minCostAssignment`. */
export interface AssignmentProblem {
  readonly sizes: readonly SizeSpots[];
  /** `costs[row × sizes + size]`, whole numbers of any sign; infinity where the assignment is not allowed. */
  readonly costs: Float64Array;
  /** Cycles whose cost is at most this count as ties; whole, 0 or more. */
  readonly slack: number;
}

/**
 * The same problem over locations: the sizes, and after them the waiting list, which has no cost.
 * Spots have ranks: one up to a size's minimum is worth more than all that is not, and one of a size that comes first is
 * worth more beside it than all spots above the minimum.
 */
export interface Locations {
  readonly rows: number;
  readonly sizes: AssignmentProblem["sizes"];
  /** Index of the waiting list, which is the number of sizes. */
  readonly waiting: number;
  /** `costs[row × (sizes + 1) + location]`. */
  readonly costs: Float64Array;
  readonly slack: number;
}

/** @throws {RangeError} for sums of costs that a double does not hold exactly, and costs that are not whole. */
export function locationsOf({ sizes, costs, slack }: AssignmentProblem): Locations {
  const waiting = sizes.length;
  const rows = waiting === 0 ? 0 : costs.length / waiting;
  if (!Number.isInteger(rows)) throw new RangeError("the costs are not a row for each");
  const maxCost = Number.MAX_SAFE_INTEGER / (2 * (waiting + 2));
  const table = new Float64Array(rows * (waiting + 1));
  costs.forEach((cost, index) => {
    const isPossible = cost === Number.POSITIVE_INFINITY || (Number.isInteger(cost) && Math.abs(cost) <= maxCost);
    if (!isPossible) throw new RangeError(`a cost of ${cost} cannot be added exactly`);
    table[index + Math.floor(index / waiting)] = cost;
  });
  return { rows, sizes, waiting, costs: table, slack };
}

/** Rank of the next spot in a size that has this many rows; 0 if it is full. */
export function rankOfNextPlace({ rows, sizes }: Locations, size: number, load: number): number {
  const places = sizes[size];
  if (places === undefined || load >= places.capacity) return 0;
  const base = rows + 2;
  return load < places.min ? base * base + (places.isFirst === true ? base : 0) : 1;
}
