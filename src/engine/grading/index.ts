export { countGroups, solvedCounts, type CountGroup } from "./count-groups";
export type { Clash } from "./find-clash";
export { solveCounts, type SolvedCounts } from "./solve-counts";
