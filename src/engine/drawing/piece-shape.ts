import type { Point, Segment } from "./point";

/** A closed outline of one section; the last point leads back to the first. */
export interface SectionShape {
  /** Its place in the piece's list. A mirrored piece has each section twice. */
  readonly section: number;
  readonly outline: readonly Point[];
  /** Width of its first row, of its last, and what its rows come to. */
  readonly fromCm: number;
  readonly toCm: number;
  readonly heightCm: number;
  /** What is wrong with the section, null where nothing is. */
  readonly fault: string | null;
}

/** Where the drawing does not know better, with the reason. */
export interface ShapeMark {
  readonly at: Point;
  readonly kind: "fault" | "step";
  readonly message: string;
}

/** Where the tape lies for one measurement. */
export interface MeasurementLine {
  readonly measurement: string;
  readonly letter: string;
  readonly label: string;
  readonly from: Point;
  readonly to: Point;
  /** The finished measurement, not the line's own length; null where a count that it needs has no number. */
  readonly cm: number | null;
}

/** A piece in one size, to scale: all lengths and places in cm as the finished fabric has them. */
export interface PieceShape {
  readonly piece: string;
  readonly size: string;
  readonly widthCm: number;
  readonly heightCm: number;
  /** False for a stand-in of no particular size: the sections do not tell the piece's shape. */
  readonly isToScale: boolean;
  /** Why it is drawn roughly, in sentences; empty where every section is drawn as it is worked. */
  readonly sketchReasons: readonly string[];
  readonly sections: readonly SectionShape[];
  readonly edges: readonly Segment[];
  /** Where one section goes on from another. */
  readonly joins: readonly Segment[];
  /** The line about which the piece is mirrored. */
  readonly centreLine: Segment | null;
  readonly marks: readonly ShapeMark[];
  readonly lines: readonly MeasurementLine[];
}

/** A shape before its measurement lines. */
export type BareShape = Omit<PieceShape, "lines">;
