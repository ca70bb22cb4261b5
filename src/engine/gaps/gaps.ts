import type { CallDocument } from "../pattern";
import { countedReadings } from "./counted-readings";
import type { GapsOutput } from "./gaps-output";
import { gaugeFindings } from "./gauge-findings";
import { interimCells } from "./interim-estimate";
import { readingSteps } from "./steps";

/**
 * Which sizes came out otherwise than promised.
 *
 * An interim estimate: each cell by the mean of its testers' gaps, its interval by the spread pooled over all cells.
 * It names no causes, and asks after no reading.
 *
 * @param call a parsed call document.
 * @returns cells, steps and findings in the pattern's and the call's order; lengths in cm.
 */
export function gaps(call: CallDocument): GapsOutput {
  return {
    cells: interimCells(call.pattern, countedReadings(call)),
    causes: [],
    gauge: gaugeFindings(call),
    testers: call.testers.map(({ id }) => ({
      tester: id,
      driftAcross: null,
      driftAlong: null,
      measurements: call.pattern.measurements.map(({ id: measurement }) => ({ measurement, h: null, k: null })),
    })),
    suspects: [],
    steps: readingSteps(call),
    variances: { offset: null, step: null, cell: null, driftAcross: null, driftAlong: null, residual: null },
    status: "converged",
  };
}
