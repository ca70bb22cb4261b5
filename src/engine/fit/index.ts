export { fitModel, type FitFinding, type FitModel } from "./fit-model";
export type { AreaEase, SizeEase } from "./right-eases";
export { judgedAreas, ratedEases, type JudgedArea, type RatedEase } from "./rated-eases";
export { gaussHermite } from "./gauss-hermite";
export { moveGains, movedTables } from "./answer-tables";
export { sizeRanges, sumOver, type SizeRange } from "./size-ranges";
export { fitCumulativeLogit, logitCovariance } from "./fit-cumulative-logit";
export type { LogitModel, ScaleAnswers } from "./cumulative-logit";
export { toldThresholds } from "./thresholds";
