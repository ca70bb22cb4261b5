import type { CallDocument } from "../pattern";
import { countedReadings } from "./counted-readings";
import { estimateGaps } from "./estimate-gaps";
import type { GapsOutput } from "./gaps-output";
import { gaugeFindings } from "./gauge-findings";
import { readingSteps } from "./steps";
import { settleCall } from "./suspects/settle-call";
import { testerFindings } from "./tester-findings";

/**
 * Which sizes came out otherwise than promised, why, and which readings are not to be believed.
 *
 * @param call a parsed call document.
 * @returns cells, causes, findings and steps in the pattern's and the call's order; lengths in cm.
 * @see design 4.4 to 4.7.
 */
export function gaps(call: CallDocument): GapsOutput {
  const settled = settleCall(call);
  const estimate = estimateGaps(settled.call);
  return {
    cells: estimate.cells,
    causes: estimate.causes,
    gauge: gaugeFindings(settled.call),
    testers: testerFindings(settled.call, countedReadings(settled.call), estimate.drifts),
    suspects: settled.suspects,
    steps: readingSteps(settled.call),
    variances: estimate.variances,
    status: estimate.status,
  };
}
