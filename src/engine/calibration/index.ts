export { calibrate, type Calibration } from "./calibrate";
export { plantedCall, type Design, type Fault, type PlantedCall } from "./planted-call";
export type { Errors, Tally } from "./tally";
