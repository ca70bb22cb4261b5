export { calibrate, type Calibration } from "./calibrate";
export { plantedCall, type Design, type Fault, type Trouble } from "./planted-call";
