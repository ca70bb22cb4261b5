import { at, solveLower } from "../../linear-algebra";
import { addRow, type SurfaceSolution } from "../../variance-components";
import type { Candidate } from "./candidate";

/** Evidence for a candidate at fixed standard deviations (docs/method.md#causes). */
export function evidenceAt(solution: SurfaceSolution, candidate: Candidate): number {
  return scoreCandidate(solution, candidate) - luckOfMany(candidate);
}

/** With many candidates of a kind, one can win by chance (docs/method.md#causes). */
export function luckOfMany({ candidatesOfKind }: Candidate): number {
  return Math.log(candidatesOfKind) / 2;
}

/**
 * Gain in log marginal likelihood from adding a candidate at fixed standard deviations: a rank-one update.
 *
 * @param solution the model without the candidate.
 * @returns the gain, at least −½ log(1 + prior variance × information).
 */
function scoreCandidate(solution: SurfaceSolution, { sensitivities, priorSd }: Candidate): number {
  const cross = new Float64Array(solution.scales.length);
  let information = 0;
  let score = 0;
  let offset = 0;
  for (const { rows, precision, score: groupScore } of solution.groups) {
    const { cells } = rows;
    const ofGroup = sensitivities.subarray(offset, offset + cells);
    offset += cells;
    const affected = affectedCells(ofGroup);
    if (affected.length === 0) continue;
    for (let i = 0; i < cells; i += 1) {
      let along = 0;
      for (const j of affected) along += at(precision, i * cells + j) * at(ofGroup, j);
      information += at(ofGroup, i) * along;
      score += at(ofGroup, i) * at(groupScore, i);
      addRow(cross, { rows, cell: i, factor: along });
    }
  }
  for (let column = 0; column < cross.length; column += 1)
    cross[column] = at(cross, column) * at(solution.scales, column);
  solveLower(solution.sharedFactor, cross);
  for (const value of cross) information -= value * value;
  const spread = 1 + priorSd * priorSd * Math.max(0, information);
  return (priorSd * priorSd * score * score) / (2 * spread) - Math.log(spread) / 2;
}

/** Indices of the cells that a candidate affects: few, for most candidates. */
function affectedCells(own: Float64Array): Int32Array {
  const moved = new Int32Array(own.length);
  let count = 0;
  for (let cell = 0; cell < own.length; cell += 1) {
    if (at(own, cell) !== 0) moved[count++] = cell;
  }
  return moved.subarray(0, count);
}
