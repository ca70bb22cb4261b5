export { viewFacts } from "./facts";
export { garmentView, withRoom } from "./garment-view";
export type { Box, Line, Place } from "./line";
export type { DrawingView, GarmentView, Shape, Tape } from "./view";
