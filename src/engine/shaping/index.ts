export { planShaping, type Section, type SectionCounts, type Shaping } from "./plan-shaping";
export { rowNoun, rowsNoun, timesText, withNoun, type RowNoun } from "./row-text";
export { shapingText } from "./shaping-text";
export { patternShaping, type ShapedPiece, type SizedSection, type SizedShaping } from "./pattern-shaping";
export { pickUpRate } from "./pick-up-rate";
export { pickUp, pickUpText, rateText } from "./pick-up";
export { pickUpTie, rateOfTie, type PickedUp } from "./pick-up-tie";
