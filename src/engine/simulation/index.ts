export { simulateCall, type SimulatedCall, type SimulationChoices } from "./simulate-call";
export type { Habits, PlantedSlip } from "./simulate-tester";
