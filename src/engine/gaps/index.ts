export { gaps, gapsOfScreened } from "./gaps";
export type {
  Cause,
  CauseInput,
  Cell,
  GapsOutput,
  GaugeFinding,
  EntryError,
  NextQuestion,
  Step,
  Outlier,
  TesterFinding,
  Variances,
} from "./gaps-output";
export {
  causeShape,
  cellSchema,
  gapsOutputSchema,
  gaugeFindingShape,
  nextQuestionSchema,
  rivalShape,
  searchStatusSchema,
  stepSchema,
  outlierSchema,
  variancesSchema,
} from "./gaps-output-schema";
export { countedReadings, type CountedReading } from "./counted-readings";
export { predictTesters, type KnownPrediction } from "./predict-testers";
export { areTied } from "./causes/are-tied";
export { cellSensitivities } from "./causes/cell-sensitivities";
export { evidenceAt } from "./causes/score-candidate";
export { causeCandidates } from "./causes/cause-candidates";
export { sameInput, type Candidate } from "./causes/candidate";
export type { Carrier } from "./gaps-output";
export { learnFromCalls } from "./earlier/learn-from-calls";
export { shownHabits } from "./earlier/shown-habits";
export { testerRecord } from "./earlier/tester-record";
export { priorFromCalls } from "./earlier/prior-from-calls";
export type { ShownSpread, ShownSpreads } from "./earlier/shown-spreads";
export { isSettled } from "./verdict";
export { estimateGaps } from "./estimate-gaps";
export { estimateInputs, type InputEstimate } from "./estimate-inputs";
export { gapReadings } from "./model/gap-readings";
export { gapSurface } from "./model/gap-surface";
export { TAPE_SHARE } from "./model/tester-block";
export { flatInCentimetres, PLAUSIBLE_SCORE } from "./outliers/entry-errors";
export { isLikelyMistake } from "./mistakes/likely-mistakes";
export { implausibleReadings } from "./outliers/implausible-readings";
export { neighbourSizeOutlier } from "./outliers/neighbour-size-outlier";
export { readingScore, scoredReadings, scoreOf, type ScoredReading } from "./outliers/reading-scores";
export { readingOutliers } from "./outliers/reading-outliers";
export { swatchOutliers } from "./outliers/swatch-outliers";
export { screenOutliers, type ScreenedCall } from "./outliers/screen-outliers";
export { powerOfTesters, testersNeeded } from "./testers-needed";
