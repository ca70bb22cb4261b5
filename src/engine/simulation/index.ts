export { simulateCall, type SimulatedCall } from "./simulate-call";
export type { PlantedEntryError, PlantedMistake, TesterHabits } from "./simulate-tester";
export { drawTruth, type PatternSds } from "./draw-truth";
export { crochetedCardigan } from "./garments/crocheted-cardigan";
export { knittedPullover } from "./garments/knitted-pullover";
