import type { CallDocument } from "../pattern";
import { countedReadings } from "./counted-readings";
import { estimateGaps } from "./estimate-gaps";
import type { GapsOutput } from "./gaps-output";
import { gaugeFindings } from "./gauge-findings";
import { predictTesters } from "./predict-testers";
import { readingSteps } from "./steps";
import { settleCall, type SettledCall } from "./suspects/settle-call";
import { testerFindings } from "./tester-findings";

/**
 * Which sizes came out otherwise than promised, why, and which readings are not to be believed.
 *
 * @param call a parsed call document.
 * @returns cells, causes, findings and steps in the pattern's and the call's order; lengths in cm.
 * @see docs/method.md#gap-model.
 */
export function gaps(call: CallDocument): GapsOutput {
  return gapsOfScreened(settleCall(call));
}

/**
 * The same of a call that has been screened for entry errors.
 *
 * @param predictions of `predictTesters` of it, and `counted` its `countedReadings`, where the caller needs them too.
 */
export function gapsOfScreened(
  { call, suspects }: SettledCall,
  predictions = predictTesters(call),
  counted = countedReadings(call, predictions),
): GapsOutput {
  const estimate = estimateGaps(call);
  return {
    cells: estimate.cells,
    causes: estimate.causes,
    gauge: gaugeFindings(call),
    testers: testerFindings(call, counted, estimate.drifts),
    suspects,
    steps: readingSteps(call, predictions),
    variances: estimate.variances,
    status: estimate.status,
  };
}
