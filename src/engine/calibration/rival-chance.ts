import { normalChance } from "../distributions";
import { areTied, type Candidate } from "../gaps";
import { at, solveLower, solveUpper } from "../linear-algebra";
import { addRow, rowTimes, type SurfaceSolution } from "../variance-components";
import type { PlantedCause } from "./planted-call";

/**
 * Probability that the strongest untied rival of a planted cause scores higher than it, with all variances known.
 *
 * With I the information in the readings, the scores of cause and rival are normal with means θ·√I and ρ·θ·√I and
 * correlation ρ; the rival wins if its square is larger.
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
  const projection = projected(solution, candidate.sensitivities);
  const causeInformation = dot(projection, candidate.sensitivities);
  if (causeInformation <= 0) return 0.5;
  const signal = Math.abs(amount) * Math.sqrt(causeInformation);
  return candidates.reduce((highest, rival) => {
    if (areTied(candidate, rival, reported)) return highest;
    const information = dot(projected(solution, rival.sensitivities), rival.sensitivities);
    if (information <= 0) return highest;
    const correlation = dot(projection, rival.sensitivities) / Math.sqrt(causeInformation * information);
    const wins =
      normalChance(-signal * Math.sqrt(Math.max(0, 1 - correlation) / 2)) +
      normalChance(-signal * Math.sqrt(Math.max(0, 1 + correlation) / 2));
    return Math.max(highest, wins);
  }, 0);
}

/** Marginal precision of the cells, with the shared columns integrated out, times a cause's sensitivities. */
function projected(solution: SurfaceSolution, sensitivities: Float64Array): Float64Array {
  const result = new Float64Array(sensitivities.length);
  const cross = new Float64Array(solution.scales.length);
  let offset = 0;
  for (const { rows, precision } of solution.groups) {
    const { cells } = rows;
    for (let i = 0; i < cells; i += 1) {
      let along = 0;
      for (let j = 0; j < cells; j += 1) along += at(precision, i * cells + j) * at(sensitivities, offset + j);
      result[offset + i] = along;
      addRow(cross, { rows, cell: i, factor: along });
    }
    offset += cells;
  }
  subtractShared(solution, { result, cross });
  return result;
}

function subtractShared(
  { groups, scales, sharedFactor }: SurfaceSolution,
  { result, cross }: { result: Float64Array; cross: Float64Array },
): void {
  const shared = cross.map((value, column) => value * at(scales, column));
  solveLower(sharedFactor, shared);
  solveUpper(sharedFactor, shared);
  const scaled = shared.map((value, column) => value * at(scales, column));
  let offset = 0;
  for (const { rows, precision } of groups) {
    const { cells } = rows;
    for (let j = 0; j < cells; j += 1) {
      const fitted = rowTimes(rows, j, scaled);
      for (let i = 0; i < cells; i += 1)
        result[offset + i] = at(result, offset + i) - at(precision, i * cells + j) * fitted;
    }
    offset += cells;
  }
}

function dot(left: Float64Array, right: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < left.length; i += 1) sum += at(left, i) * at(right, i);
  return sum;
}
