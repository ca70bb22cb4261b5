import { at } from "../../linear-algebra";
import type { Candidate } from "./candidate";

/** Squared cosine above which no data of these cells can tell two candidates apart (docs/method.md#causes). */
const TIED = 0.999;

/** True where two candidates move the reported cells in the same proportion. */
export function areTied(left: Candidate, right: Candidate, reported: readonly boolean[]): boolean {
  let product = 0;
  for (let cell = 0; cell < reported.length; cell += 1) {
    if (reported[cell] === true) product += at(left.moves, cell) * at(right.moves, cell);
  }
  if (product === 0) return false;
  return product * product > TIED * squares(left, reported) * squares(right, reported);
}

function squares({ moves }: Candidate, reported: readonly boolean[]): number {
  let sum = 0;
  for (let cell = 0; cell < reported.length; cell += 1) if (reported[cell] === true) sum += at(moves, cell) ** 2;
  return sum;
}
