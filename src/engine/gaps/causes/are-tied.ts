import { at } from "../../linear-algebra";
import type { Candidate } from "./candidate";

/** Squared cosine above which data on these cells cannot distinguish two candidates (docs/method.md#causes). */
const MIN_SQUARED_COSINE = 0.999;

/** True if two candidates affect the reported cells in the same proportion. */
export function areTied(left: Candidate, right: Candidate, reported: readonly boolean[]): boolean {
  let product = 0;
  for (let cell = 0; cell < reported.length; cell += 1) {
    if (reported[cell] === true) product += at(left.sensitivities, cell) * at(right.sensitivities, cell);
  }
  if (product === 0) return false;
  return product * product > MIN_SQUARED_COSINE * squares(left, reported) * squares(right, reported);
}

function squares({ sensitivities }: Candidate, reported: readonly boolean[]): number {
  let sum = 0;
  for (let cell = 0; cell < reported.length; cell += 1)
    if (reported[cell] === true) sum += at(sensitivities, cell) ** 2;
  return sum;
}
