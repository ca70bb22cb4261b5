/** Counts of what happened out of how often it could have. */
export class Tally {
  private readonly counts = new Map<string, { hits: number; of: number }>();

  /** One chance of `name`, taken or not. */
  add(name: string, hit: boolean): void {
    const count = this.counts.get(name) ?? { hits: 0, of: 0 };
    this.counts.set(name, { hits: count.hits + (hit ? 1 : 0), of: count.of + 1 });
  }

  /** Share of the chances that were taken; null where there was none. */
  share(name: string): number | null {
    const count = this.counts.get(name);
    return count === undefined ? null : count.hits / count.of;
  }

  /** How many chances were taken. */
  hits(name: string): number {
    return this.counts.get(name)?.hits ?? 0;
  }

  /** How many chances there were. */
  of(name: string): number {
    return this.counts.get(name)?.of ?? 0;
  }
}

/** Root mean squares of errors by name. */
export class Errors {
  private readonly sums = new Map<string, { squares: number; of: number }>();

  add(name: string, error: number): void {
    const sum = this.sums.get(name) ?? { squares: 0, of: 0 };
    this.sums.set(name, { squares: sum.squares + error * error, of: sum.of + 1 });
  }

  rootMeanSquare(name: string): number {
    const sum = this.sums.get(name);
    return sum === undefined ? Number.NaN : Math.sqrt(sum.squares / sum.of);
  }
}
