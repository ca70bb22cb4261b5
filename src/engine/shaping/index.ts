export {
  planShaping,
  type Section,
  type SectionCounts,
  type SectionShaping,
  type Shaping,
  type ShapingFault,
  type ShapingPlan,
} from "./plan-shaping";
export { withNoun, rowNoun, type RowNoun } from "./row-text";
export { shapingText } from "./shaping-text";
export { patternShaping, type ShapedPiece, type SizedSection, type SizedShaping } from "./pattern-shaping";
export { pickUpRate, type PickUpRate } from "./pick-up-rate";
export { pickUp, pickUpText, rateText, type PickUp } from "./pick-up";
export { pickUpTie, rateOfTie, type PickedUp } from "./pick-up-tie";
