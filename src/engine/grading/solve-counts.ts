import type { Solver } from "../integer-program";
import type { Grading, PatternDocument } from "../pattern";
import type { CountGroup } from "./count-groups";
import { solveByProgram, type SolvedCounts } from "./solve-by-program";
import { solveBySize } from "./solve-by-size";

/**
 * Solves a group of counts in all sizes at once: first the excess over tolerance, then the deviation, then the distance from
 * the tested numbers, then uneven steps, then the number of stitches is minimised.
 *
 * Both methods are exact. A group usually has few choices per size, and is searched from size to size in milliseconds; if it has
 * many, or none, an integer programming solver is used.
 *
 * @param near the tested grading; counts and sizes that it leaves out are unrestricted.
 * @param slack deviation without cost, in tolerances.
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
