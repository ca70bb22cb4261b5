export { solvedCounts } from "./count-groups";
export type { Clash } from "./find-clash";
export { gradeChoices, type GradeChoices, type GradingChoice } from "./grade-choices";
export { clashSchema, gradeChoicesSchema } from "./grade-choices-schema";
export { gradeFrontier, type FrontierOutcome } from "./grade-frontier";
export { gradePattern, type GradeOutcome } from "./grade-pattern";
export { joinAsNeeded } from "./join-as-needed";
export { parseGradeRequest } from "./grade-request";
export {
  gradedMeasurements,
  gradingObjective,
  type GradedMeasurement,
  type GradingObjective,
} from "./graded-measurements";
export type { GroupRequest } from "./grading-stages";
export { frontierByProgram, groupFrontier } from "./group-frontier";
export { relaxations, type Relaxation } from "./relax-clash";
export { nearestFeasible } from "./nearest-feasible";
export { solveByProgram, type SolvedCounts } from "./solve-by-program";
export { solveBySize } from "./solve-by-size";
export { solveCounts } from "./solve-counts";
