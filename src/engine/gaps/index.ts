export { gaps, gapsOfScreened } from "./gaps";
export type {
  Cause,
  CauseInput,
  CauseKind,
  Cell,
  GapsOutput,
  GaugeFinding,
  Slip,
  Step,
  Suspect,
  TesterFinding,
  Variances,
  Verdict,
} from "./gaps-output";
export {
  causeInputShape,
  causeShape,
  cellSchema,
  gapsOutputSchema,
  gaugeFindingShape,
  rivalShape,
  searchStatusSchema,
  stepSchema,
  suspectSchema,
  variancesSchema,
} from "./gaps-output-schema";
export { countedReadings, isCounted, type CountedReading } from "./counted-readings";
export { predictTesters, type KnownPrediction } from "./predict-testers";
export { areTied } from "./causes/tied";
export { movedCells } from "./causes/moved-cells";
export { causeCandidates } from "./causes/cause-candidates";
export { sameInput, type Candidate } from "./causes/candidate";
export { estimateGaps } from "./estimate-gaps";
export { estimateTaken, type TakenEstimate } from "./estimate-taken";
export { gapReadings } from "./model/gap-readings";
export { gapSurface } from "./model/gap-surface";
export { neighbourSizeSuspect } from "./suspects/neighbour-size";
export { readingScore, scoredReadings } from "./suspects/reading-scores";
export { readingSuspects } from "./suspects/reading-suspects";
export { swatchSuspects } from "./suspects/swatch-suspects";
export { settleCall, type SettledCall } from "./suspects/settle-call";
export { testersNeeded } from "./testers-needed";
export { fitFindings, type FitFinding } from "./fit-findings";
