export { outlineGarment } from "./outline";
export { parseOutlineInput } from "./outline-input";
export { usedStitches, type GarmentStitches } from "./used-stitches";
export { stepText } from "./step-text";
export { stepsFrom, withNumbers } from "./with-numbers";
export { stepsInSizes, type StepInSize, type PieceSteps, type SeamFault, type StepInSizes } from "./steps-in-sizes";
export { workedGarment, type WorkedGarment, type WorkedPiece } from "./worked-pieces";
export type { OutlinePoint } from "./trace-outline";
export type { GarmentFault } from "./garment-work";
