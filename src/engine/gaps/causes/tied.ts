import type { Candidate } from "./candidate";

/** Squared cosine above which no data of these cells can tell two candidates apart (design 4.6). */
const TIED = 0.999;

/** True where two candidates move the reported cells in the same proportion. */
export function areTied(left: Candidate, right: Candidate, reported: readonly boolean[]): boolean {
  let product = 0;
  let leftSquares = 0;
  let rightSquares = 0;
  left.moves.forEach((move, cell) => {
    if (!reported[cell]) return;
    const other = right.moves[cell] ?? 0;
    product += move * other;
    leftSquares += move * move;
    rightSquares += other * other;
  });
  return product * product > TIED * leftSquares * rightSquares;
}
