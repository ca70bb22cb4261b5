import type { CallDocument } from "../pattern";
import { countedReadings } from "./counted-readings";
import { estimateGaps } from "./estimate-gaps";
import type { GapsOutput } from "./gaps-output";
import { gaugeFindings } from "./gauge-findings";
import { likelyMistakes } from "./mistakes/likely-mistakes";
import { predictTesters } from "./predict-testers";
import { readingSteps } from "./steps";
import { screenOutliers, type ScreenedCall } from "./outliers/screen-outliers";
import { testerFindings } from "./tester-findings";

/**
 * Which sizes came out different from the pattern, the likely causes, and which readings are implausible.
 *
 * @param call a parsed call document.
 * @returns cells, causes, findings and steps in the pattern's and the call's order; lengths in cm.
 * @see docs/method.md#gap-model.
 */
export function gaps(call: CallDocument): GapsOutput {
  return gapsOfScreened(screenOutliers(call));
}

/**
 * The same for a call that has already been screened for entry errors.
 *
 * @param predictions of `predictTesters` for it, and `counted` its `countedReadings`, if the caller has them already.
 */
export function gapsOfScreened(
  { call, suspects }: ScreenedCall,
  predictions = predictTesters(call),
  counted = countedReadings(call, predictions),
): GapsOutput {
  const estimate = estimateGaps(call);
  return {
    cells: estimate.cells,
    causes: estimate.causes,
    gauge: gaugeFindings(call),
    testers: testerFindings(call, counted, estimate),
    suspects: likelyMistakes(call, suspects, estimate.mistakes),
    askNext: estimate.askNext,
    steps: readingSteps(call, predictions),
    variances: estimate.variances,
    status: estimate.status,
  };
}
