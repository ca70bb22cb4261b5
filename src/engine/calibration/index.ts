export { calibrate, type Calibration } from "./calibrate";
export { plantedCall, type Design, type Fault } from "./planted-call";
