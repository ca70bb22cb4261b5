import { at } from "../../linear-algebra";
import type { Candidate } from "./candidate";

/** Squared cosine above which no data of these cells can tell two candidates apart (design 4.6). */
const TIED = 0.999;

/** True where two candidates move the reported cells in the same proportion. */
export function areTied(left: Candidate, right: Candidate, reported: readonly boolean[]): boolean {
  let product = 0;
  let leftSquares = 0;
  let rightSquares = 0;
  for (let cell = 0; cell < reported.length; cell += 1) {
    if (reported[cell] !== true) continue;
    const move = at(left.moves, cell);
    const other = at(right.moves, cell);
    product += move * other;
    leftSquares += move * move;
    rightSquares += other * other;
  }
  return product * product > TIED * leftSquares * rightSquares;
}
