export { simulateCall, type SimulatedCall, type SimulationChoices } from "./simulate-call";
export { readAgain } from "./read-again";
export type { GarmentLength, Person, PlantedEntryError, PlantedMistake, TesterHabits } from "./simulate-tester";
export type { BlockingHabits } from "./draw-blocking";
export { drawTruth, type PatternSds } from "./draw-truth";
export { crochetedCardigan } from "./garments/crocheted-cardigan";
export { knittedPullover } from "./garments/knitted-pullover";
