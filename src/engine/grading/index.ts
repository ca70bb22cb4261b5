export { countGroups, solvedCounts, type CountGroup } from "./count-groups";
export type { Clash } from "./find-clash";
export { gradeChoices, type ChoicesRequest, type GradeChoices, type GradingChoice } from "./grade-choices";
export { gradePattern, type GradeOutcome } from "./grade-pattern";
export { parseGradeRequest, type GradeRequest } from "./grade-request";
export {
  gradedMeasurements,
  gradingObjective,
  type GradedMeasurement,
  type GradingObjective,
} from "./graded-measurements";
export type { GroupRequest } from "./grading-stages";
export { relaxations, type Relaxation } from "./relax-clash";
export { nearestFeasible, type NearestFeasible } from "./nearest-feasible";
export { solveByProgram, type Limit, type SolvedCounts } from "./solve-by-program";
export { solveBySize } from "./solve-by-size";
export { solveCounts } from "./solve-counts";
