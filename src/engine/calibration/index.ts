export { calibrate, type Calibration } from "./calibrate";
export { calibrateGrowth, type GrowthScenario } from "./calibrate-growth";
export { calibrateAsking, type AskedCells } from "./calibrate-asking";
export { calibrateNeeded, calibrateTesters } from "./calibrate-testers";
export { calibrateYarn, type YarnScenario } from "./calibrate-yarn";
export { plantedCall, type Design, type Fault, type Trouble } from "./planted-call";
export type { Tally } from "./tally";
export { calibrateFit } from "./calibrate-fit";
export type { FitScenario } from "./planted-fit";
