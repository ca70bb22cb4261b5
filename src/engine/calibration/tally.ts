/** Numbers of hits and trials by name. */
export class Tally {
  private readonly counts = new Map<string, { hits: number; of: number }>();

  /** Adds one trial of `name`. */
  add(name: string, hit: boolean): void {
    const count = this.counts.get(name) ?? { hits: 0, of: 0 };
    this.counts.set(name, { hits: count.hits + (hit ? 1 : 0), of: count.of + 1 });
  }

  /** All counts by name, to be handed to another process. */
  entries(): [string, { readonly hits: number; readonly of: number }][] {
    return [...this.counts];
  }

  /** Share of trials that were hits; null where there was no trial. */
  share(name: string): number | null {
    const count = this.counts.get(name);
    return count === undefined ? null : count.hits / count.of;
  }

  /** Number of hits. */
  hits(name: string): number {
    return this.counts.get(name)?.hits ?? 0;
  }

  /** Number of trials. */
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
