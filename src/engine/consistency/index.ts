export { algorithmA, type RobustSummary } from "./algorithm-a";
export { mandelH, mandelHLimit, mandelK, mandelKLimit } from "./mandel";
export { precisionOf, type Precision } from "./precision";
export { mean, median, squaredDeviations, standardDeviation } from "./summaries";
