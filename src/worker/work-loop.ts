import { setTimeout as pause } from "node:timers/promises";

/** Work done one piece after another. */
export interface WorkLoop {
  /** There may be something to do: looks at once, or again as soon as what is under way is done. */
  wake(): void;
  /** Ends after what is under way. */
  stop(): Promise<void>;
}

interface Work {
  /** Takes up the next piece and finishes it. @returns false where there is nothing to do. */
  readonly next: () => Promise<boolean>;
  /** Told of a piece that failed; the loop goes on after a pause. */
  readonly onError: (error: unknown) => void;
  /** How often it looks on its own, in case a signal was missed. */
  readonly lookEveryMs?: number;
}

const LOOK_EVERY_MS = 1_000;

/** Begins to look for work, at once and then whenever it is woken. */
export function startWorkLoop({ next, onError, lookEveryMs = LOOK_EVERY_MS }: Work): WorkLoop {
  const stopping = new AbortController();
  let woken = true;
  let ring = (): void => undefined;
  const breathe = () => pause(lookEveryMs, undefined, { signal: stopping.signal, ref: false }).catch(() => undefined);
  const rest = async () =>
    await new Promise<void>((resolve) => {
      const look = setTimeout(resolve, lookEveryMs).unref();
      ring = () => {
        clearTimeout(look);
        resolve();
      };
      if (woken) ring();
    });
  const loop = async () => {
    while (!stopping.signal.aborted) {
      woken = false;
      try {
        if (!(await next())) await rest();
      } catch (error) {
        onError(error);
        await breathe();
      }
    }
  };
  const ended = loop();
  return {
    wake: () => {
      woken = true;
      ring();
    },
    stop: async () => {
      stopping.abort();
      ring();
      await ended;
    },
  };
}
