import type { Solver } from "../integer-program";
import type { Grading, PatternDocument } from "../pattern";
import type { CountGroup } from "./count-groups";
import { solveByProgram, type SolvedCounts } from "./solve-by-program";
import { solveBySize } from "./solve-by-size";

/**
 * New numbers for a group of counts, in all sizes at once: first nothing beyond tolerance, then least deviation, then near
 * the tested numbers, then even steps, then few stitches.
 *
 * Both ways are exact. A group has few choices a size, and is searched from size to size in milliseconds; where it has
 * many, or none, a solver of integer programs takes it.
 *
 * @param near the tested grading; counts and sizes that it leaves out may come out as they like.
 * @param slack deviation that costs nothing, in tolerances.
 * @see docs/method.md#grading.
 */
export function solveCounts({
  pattern,
  group,
  near,
  slack,
  solver,
}: {
  readonly pattern: PatternDocument;
  readonly group: CountGroup;
  readonly near?: Grading;
  readonly slack: number;
  readonly solver: Solver;
}): SolvedCounts {
  const counts = pattern.counts.filter(({ id }) => group.counts.includes(id));
  const request = { pattern, counts, measurements: group.measurements, near, slack };
  const grading = solveBySize(request);
  return grading === null ? solveByProgram(request, solver) : { status: "optimal", grading };
}
