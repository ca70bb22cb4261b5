import { normalChance } from "../distributions";
import { areTied, type Candidate } from "../gaps";
import { at, solveLower } from "../linear-algebra";
import type { SurfaceSolution } from "../variance-components";
import type { PlantedCause } from "./planted-call";

/**
 * How often the likeliest untied rival of a planted cause would look better than it, with all variances known.
 *
 * With I the information that the readings hold, the scores of cause and rival are normal with means θ·√I and ρ·θ·√I and
 * correlation ρ; the rival wins where its square is larger.
 *
 * @param solution the model without causes at the true variances.
 * @param reported whether each cell has a report.
 * @returns chance from 0 to ½.
 */
export function rivalChance(
  solution: SurfaceSolution,
  { candidate, amount }: PlantedCause,
  { candidates, reported }: { candidates: readonly Candidate[]; reported: readonly boolean[] },
): number {
  const own = projected(solution, candidate.moves);
  const ownInformation = dot(own, candidate.moves);
  if (ownInformation <= 0) return 0.5;
  const signal = Math.abs(amount) * Math.sqrt(ownInformation);
  return candidates.reduce((most, rival) => {
    if (areTied(candidate, rival, reported)) return most;
    const information = dot(projected(solution, rival.moves), rival.moves);
    if (information <= 0) return most;
    const correlation = dot(own, rival.moves) / Math.sqrt(ownInformation * information);
    const wins =
      normalChance(-signal * Math.sqrt(Math.max(0, 1 - correlation) / 2)) +
      normalChance(-signal * Math.sqrt(Math.max(0, 1 + correlation) / 2));
    return Math.max(most, wins);
  }, 0);
}

/** What the readings say of a move of the cells, shared columns integrated out: the precision of the cells times the move. */
function projected(solution: SurfaceSolution, moves: Float64Array): Float64Array {
  const result = new Float64Array(moves.length);
  const cross = new Float64Array(solution.scales.length);
  let offset = 0;
  for (const { rows, precision } of solution.groups) {
    const cells = rows.length;
    rows.forEach((row, i) => {
      let along = 0;
      for (let j = 0; j < cells; j += 1) along += at(precision, i * cells + j) * at(moves, offset + j);
      result[offset + i] = along;
      for (const { column, weight } of row)
        cross[column] = at(cross, column) + weight * at(solution.scales, column) * along;
    });
    offset += cells;
  }
  return subtractShared(solution, { result, cross });
}

function subtractShared(
  solution: SurfaceSolution,
  { result, cross }: { result: Float64Array; cross: Float64Array },
): Float64Array {
  solveLower(solution.sharedFactor, cross);
  let offset = 0;
  for (const { rows, precision } of solution.groups) {
    const cells = rows.length;
    const size = cross.length;
    const roots = new Float64Array(size * cells);
    rows.forEach((row, j) => {
      for (const { column, weight } of row) {
        const scaled = weight * at(solution.scales, column);
        for (let i = 0; i < cells; i += 1) {
          roots[column * cells + i] = at(roots, column * cells + i) + scaled * at(precision, i * cells + j);
        }
      }
    });
    solveLower(solution.sharedFactor, roots, cells);
    for (let i = 0; i < cells; i += 1) {
      for (let column = 0; column < size; column += 1) {
        result[offset + i] = at(result, offset + i) - at(roots, column * cells + i) * at(cross, column);
      }
    }
    offset += cells;
  }
  return result;
}

function dot(left: Float64Array, right: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < left.length; i += 1) sum += at(left, i) * at(right, i);
  return sum;
}
