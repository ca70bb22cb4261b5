export { garmentView } from "./garment-view";
export type { Box, Line, Place } from "./line";
export type { DrawingView, GarmentView, Shape, Tape } from "./view";
