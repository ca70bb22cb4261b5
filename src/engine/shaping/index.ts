export {
  planShaping,
  type Section,
  type SectionCounts,
  type SectionShaping,
  type Shaping,
  type ShapingFault,
  type ShapingPlan,
} from "./plan-shaping";
export { numbered, rowNoun, type RowNoun } from "./row-words";
export { shapingWords } from "./shaping-words";
export { patternShaping, type ShapedPiece, type SizedSection, type SizedShaping } from "./pattern-shaping";
export { pickUpRate, type PickUpRate } from "./pick-up-rate";
export { pickUp, pickUpWords, rateWords, type PickUp } from "./pick-up";
export { pickUpTie, rateOfTie, type PickedUp } from "./pick-up-tie";
