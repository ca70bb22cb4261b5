export { planShaping, type SectionCounts, type Shaping } from "./plan-shaping";
export { rowNoun, rowsNoun, timesText, withNoun, type RowNoun } from "./row-text";
export { shapingText } from "./shaping-text";
export { pickUpRate } from "./pick-up-rate";
export { pickUp, pickUpText, rateText } from "./pick-up";
export { pickUpTie, rateOfTie, type PickedUp } from "./pick-up-tie";
