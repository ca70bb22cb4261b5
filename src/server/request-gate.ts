interface Limits {
  /** How many may be inside. */
  readonly atOnce: number;
  /** How many may wait. */
  readonly waiting: number;
  readonly waitMs: number;
  /** Whoever takes longer counts as gone: a slow reader keeps nobody out. */
  readonly stayMs: number;
}

type Leave = () => void;

/**
 * Lets requests in by the order in which they came. A hundred pages begun at once would each wait for the others'
 * queries until all of them are too late; some at a time are all in time.
 */
export class RequestGate {
  #inside = 0;
  readonly #queue = new Set<(leave: Leave) => void>();

  constructor(private readonly limits: Limits) {}

  /** @returns how to leave again; null where there are too many, or it took too long. */
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
