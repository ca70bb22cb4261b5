export { assignAtLeastCost } from "./assignment/assign-at-least-cost";
export type { AssignmentProblem } from "./assignment/assignment-problem";
export { bodyRuler, type RulerMark } from "./body-ruler";
export { chanceOfFinishers } from "./chance-of-finishers";
export { fillPlace, type Successor } from "./fill-place";
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
export { USUAL_CHANCE, USUAL_LOSS } from "./usual-loss";
export type { NearestApplicant, ShortSize } from "./short-sizes";
