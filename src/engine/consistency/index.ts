export { algorithmA } from "./algorithm-a";
export { mandelH, mandelHLimit, mandelK, mandelKLimit } from "./mandel";
export { precisionOf } from "./precision";
export { mean, median, standardDeviation } from "./summaries";
