import { at, indexAt } from "../../linear-algebra";
import { rankOfNextPlace, type Locations } from "./assignment-problem";
import { loadsOf, type Potentials } from "./potentials";

/** An optimal solution, and the moves to other optimal ones: those with reduced cost 0 under the dual prices. */
export class EqualCostMoves {
  private readonly width: number;
  private readonly loads: Int32Array;
  /** `equal[row × width + location]`: 1 if the row may have this location at equal cost. */
  private readonly equal: Int32Array;
  /** `latest[from × width + to]`: the latest row in a size that may move there at equal cost, −1 if none may. */
  private readonly latest: Int32Array;

  constructor(
    private readonly problem: Locations,
    private readonly potentials: Potentials,
    readonly locations: Int32Array,
  ) {
    this.width = problem.waiting + 1;
    this.loads = loadsOf(problem, locations);
    this.equal = new Int32Array(problem.rows * this.width);
    this.latest = new Int32Array(problem.waiting * this.width).fill(-1);
    for (let row = 0; row < problem.rows; row += 1) this.markEqual(row);
    for (let row = 0; row < problem.rows; row += 1) this.recordJoined(row);
  }

  isEquivalent(row: number, location: number): boolean {
    return indexAt(this.equal, row * this.width + location) === 1;
  }

  latestOf(from: number, to: number): number {
    return indexAt(this.latest, from * this.width + to);
  }

  move(row: number, to: number): void {
    const from = indexAt(this.locations, row);
    this.locations[row] = to;
    this.loads[from] = indexAt(this.loads, from) - 1;
    this.loads[to] = indexAt(this.loads, to) + 1;
    if (from < this.problem.waiting) this.recordLeft(row, from);
    this.recordJoined(row);
  }

  /** Whether a size can have one row more at equal cost. */
  mayGrow(size: number): boolean {
    const rank = rankOfNextPlace(this.problem, size, indexAt(this.loads, size));
    return rank > 0 && this.hasValue(size, rank);
  }

  /** Whether a size can have one row less at equal cost. */
  mayShrink(size: number): boolean {
    const load = indexAt(this.loads, size);
    return load > 0 && this.hasValue(size, rankOfNextPlace(this.problem, size, load - 1));
  }

  private hasValue(size: number, rank: number): boolean {
    const { waiting, slack } = this.problem;
    const { ranks, costs } = this.potentials;
    if (at(ranks, size) - at(ranks, waiting) !== rank) return false;
    return Math.abs(at(costs, size) - at(costs, waiting)) <= slack;
  }

  private markEqual(row: number): void {
    const { costs, slack } = this.problem;
    const { ranks, costs: prices } = this.potentials;
    const stands = indexAt(this.locations, row);
    const stays = at(costs, row * this.width + stands) - at(prices, stands);
    for (let location = 0; location < this.width; location += 1) {
      const moved = at(costs, row * this.width + location) - at(prices, location);
      if (at(ranks, location) === at(ranks, stands) && moved - stays <= slack)
        this.equal[row * this.width + location] = 1;
    }
  }

  private recordJoined(row: number): void {
    const stands = indexAt(this.locations, row);
    if (stands === this.problem.waiting) return;
    for (let to = 0; to < this.width; to += 1) {
      if (to !== stands && this.isEquivalent(row, to) && row > this.latestOf(stands, to))
        this.latest[stands * this.width + to] = row;
    }
  }

  private recordLeft(row: number, from: number): void {
    for (let to = 0; to < this.width; to += 1) {
      if (this.latestOf(from, to) !== row) continue;
      let next = row - 1;
      while (next >= 0 && !(indexAt(this.locations, next) === from && this.isEquivalent(next, to))) next -= 1;
      this.latest[from * this.width + to] = next;
    }
  }
}
