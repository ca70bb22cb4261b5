export { minCostAssignment } from "./assignment/min-cost-assignment";
export { bodyRuler, type RulerMark } from "./body-ruler";
export { chanceOfFinishers, invitationsFor, DEFAULT_CONFIDENCE, DEFAULT_DROPOUT_RATE } from "./finishers";
export { findReplacements } from "./find-replacements";
export { fitInSize, fitOnMarks, REACH, type Applicant, type BodyDifference, type FitInSize } from "./fit-in-size";
export { invitationsWithin } from "./invitations-within";
export { mostTesters, usualMost } from "./most-testers";
export { parsePlacesRequest } from "./places-request";
export { placeApplicants, type PlacedApplicants, type PlacesObjective } from "./place-applicants";
