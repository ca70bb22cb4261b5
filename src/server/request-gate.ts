interface Limits {
  /** How many may be inside. */
  readonly atOnce: number;
  /** How many may wait. */
  readonly waiting: number;
  readonly waitMs: number;
  /** A slower client counts as gone, so that it blocks nobody. */
  readonly stayMs: number;
}

type Leave = () => void;

/**
 * Admits requests in order of arrival. A hundred pages started at once would wait for each other's queries until all of them are too late; a few at a time are all in time.
 */
export class RequestGate {
  #inside = 0;
  readonly #queue = new Set<(leave: Leave) => void>();

  constructor(private readonly limits: Limits) {}

  /** @returns a function to leave; null where there are too many, or it took too long. */
  async enter(): Promise<Leave | null> {
    const { atOnce, waiting, waitMs } = this.limits;
    if (this.#inside < atOnce) return this.#admit();
    if (this.#queue.size >= waiting) return null;
    return await new Promise((resolve) => {
      const turn = (leave: Leave | null) => {
        clearTimeout(late);
        resolve(leave);
      };
      const late = setTimeout(() => {
        this.#queue.delete(turn);
        turn(null);
      }, waitMs);
      this.#queue.add(turn);
    });
  }

  #admit(): Leave {
    this.#inside += 1;
    let isInside = true;
    const leave = () => {
      clearTimeout(slow);
      if (!isInside) return;
      isInside = false;
      this.#inside -= 1;
      this.#next();
    };
    const slow = setTimeout(leave, this.limits.stayMs);
    return leave;
  }

  #next(): void {
    const [turn] = this.#queue;
    if (turn === undefined) return;
    this.#queue.delete(turn);
    turn(this.#admit());
  }
}
