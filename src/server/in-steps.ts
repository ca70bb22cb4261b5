import "server-only";
import { setImmediate as othersTurn } from "node:timers/promises";

/** Does long work step by step, and lets other requests be answered between its steps. */
export async function inSteps<Result>(steps: Generator<undefined, Result>): Promise<Result> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    await othersTurn();
  }
}
