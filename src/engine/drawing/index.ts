export { drawPieces } from "./draw-pieces";
export type { MeasurementLine, PieceShape, ShapeMark } from "./piece-shape";
export type { Point, Segment } from "./point";
