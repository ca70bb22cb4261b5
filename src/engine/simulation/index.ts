export { simulateCall, type SimulatedCall, type SimulationChoices } from "./simulate-call";
export type { TesterHabits, PlantedEntryError } from "./simulate-tester";
export { drawTruth, type PatternSds } from "./draw-truth";
export { crochetedCardigan } from "./garments/crocheted-cardigan";
export { knittedPullover } from "./garments/knitted-pullover";
