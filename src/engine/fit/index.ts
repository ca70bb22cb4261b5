export { fitModel, type FitFinding, type FitModel } from "./fit-model";
export { judgedAreas, ratedEases, type RatedEase } from "./rated-eases";
export { gaussHermite } from "./gauss-hermite";
export { moveGains, movedTables } from "./answer-tables";
export { sizeRanges, sumOver } from "./size-ranges";
export { fitCumulativeLogit, logitCovariance } from "./fit-cumulative-logit";
export type { LogitModel, ScaleAnswers } from "./cumulative-logit";
export { toldThresholds } from "./thresholds";
