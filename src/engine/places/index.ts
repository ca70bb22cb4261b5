export { minCostAssignment } from "./assignment/min-cost-assignment";
export type { AssignmentProblem } from "./assignment/assignment-problem";
export { bodyRuler, type RulerMark } from "./body-ruler";
export { chanceOfFinishers } from "./chance-of-finishers";
export { findReplacements, type Successor } from "./find-replacements";
export { fitInSize, fitOnMarks, REACH, type Applicant, type BodyDifference, type FitInSize } from "./fit-in-size";
export { invitationsFor } from "./invitations-for";
export {
  placeApplicants,
  type PlacedApplicant,
  type PlacedApplicants,
  type PlacesObjective,
  type WaitingApplicant,
} from "./place-applicants";
export type { PassedOver, PlacedReason, WaitingReason, WouldTake } from "./place-reason";
export { DEFAULT_CONFIDENCE, DEFAULT_DROPOUT_RATE } from "./default-rates";
export type { NearestApplicant, ShortSize } from "./short-sizes";
