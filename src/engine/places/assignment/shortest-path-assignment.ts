import { at, indexAt } from "../../linear-algebra";
import { rankOfNextPlace, type Locations } from "./assignment-problem";
import { RowHeap } from "./row-heap";

/**
 * Adds the rows one after another, each by the cheapest chain of moves that ends in the spot of the highest rank, or in
 * moving a row to the waiting list: after each, the solution is optimal for the rows added so far.
 *
 * @returns the location of each row.
 * @see Successive shortest paths: Ahuja, Magnanti and Orlin (1993), Network flows, section 9.7 (from memory). The paths
 *   run over the sizes only, because only the row with the cheapest move out of each size matters.
 */
export function shortestPathAssignment(problem: Locations): Int32Array {
  const board = new Board(problem);
  for (let row = 0; row < problem.rows; row += 1) board.addRow(row);
  return board.locations;
}

/** The end of a chain: the size that gets one row more, or the one from which a row moves to the waiting list. */
interface ChainEnd {
  readonly size: number;
  readonly drops: boolean;
}

class Board {
  readonly locations: Int32Array;
  private readonly width: number;
  private readonly loads: Int32Array;
  /** `moves[size × width + location]`: the rows in a size by the cost of their move, including stale entries of rows that have left. */
  private readonly moves: readonly RowHeap[];
  private readonly cheapest: Float64Array;
  private readonly distances: Float64Array;
  /** The previous size on the chain, −1 if the new row goes there directly. */
  private readonly before: Int32Array;

  constructor(private readonly problem: Locations) {
    const { rows, waiting } = problem;
    this.width = waiting + 1;
    this.locations = new Int32Array(rows).fill(waiting);
    this.loads = new Int32Array(waiting);
    this.moves = Array.from({ length: waiting * this.width }, () => new RowHeap());
    this.cheapest = new Float64Array(waiting * this.width).fill(Number.POSITIVE_INFINITY);
    this.distances = new Float64Array(waiting);
    this.before = new Int32Array(waiting);
  }

  addRow(row: number): void {
    this.findShortestPaths(row);
    const end = this.bestEnd();
    if (end === undefined) return;
    const { waiting } = this.problem;
    const touched = [end.size];
    if (end.drops) this.locations[this.rowToMove(end.size, waiting)] = waiting;
    else this.loads[end.size] = indexAt(this.loads, end.size) + 1;
    // From the end, so that a row leaves each size before another joins it.
    let size = end.size;
    for (let from = indexAt(this.before, size); from >= 0; from = indexAt(this.before, size)) {
      this.join(this.rowToMove(from, size), size);
      touched.push(from);
      size = from;
    }
    this.join(row, size);
    for (const changed of touched) this.refresh(changed);
  }

  /** Cheapest chains of moves from a new row to every size: Bellman and Ford. */
  private findShortestPaths(row: number): void {
    const { waiting, costs } = this.problem;
    for (let size = 0; size < waiting; size += 1) this.distances[size] = at(costs, row * this.width + size);
    this.before.fill(-1);
    for (let changed = true; changed;) {
      changed = false;
      for (let from = 0; from < waiting; from += 1) {
        for (let to = 0; to < waiting; to += 1) {
          const through = at(this.distances, from) + at(this.cheapest, from * this.width + to);
          if (through >= at(this.distances, to)) continue;
          this.distances[to] = through;
          this.before[to] = from;
          changed = true;
        }
      }
    }
  }

  private bestEnd(): ChainEnd | undefined {
    const { waiting } = this.problem;
    let best: ChainEnd | undefined;
    let [bestRank, bestCost] = [0, 0];
    const consider = (end: ChainEnd, rank: number, cost: number) => {
      if (!Number.isFinite(cost) || rank < bestRank || (rank === bestRank && cost >= bestCost)) return;
      [best, bestRank, bestCost] = [end, rank, cost];
    };
    for (let size = 0; size < waiting; size += 1) {
      const distance = at(this.distances, size);
      const rank = rankOfNextPlace(this.problem, size, indexAt(this.loads, size));
      if (rank > 0) consider({ size, drops: false }, rank, distance);
      consider({ size, drops: true }, 0, distance + at(this.cheapest, size * this.width + waiting));
    }
    return best;
  }

  private rowToMove(from: number, to: number): number {
    return this.moves[from * this.width + to]?.top()?.row ?? -1;
  }

  private join(row: number, size: number): void {
    this.locations[row] = size;
    const { costs, waiting } = this.problem;
    const stays = at(costs, row * this.width + size);
    for (let to = 0; to <= waiting; to += 1) {
      const cost = at(costs, row * this.width + to);
      if (to !== size && Number.isFinite(cost)) this.moves[size * this.width + to]?.push(row, cost - stays);
    }
  }

  private refresh(size: number): void {
    for (let to = 0; to < this.width; to += 1) {
      const heap = this.moves[size * this.width + to];
      while (heap?.top() !== undefined && indexAt(this.locations, heap.top()?.row ?? -1) !== size) heap.pop();
      this.cheapest[size * this.width + to] = heap?.top()?.key ?? Number.POSITIVE_INFINITY;
    }
  }
}
