import type { Point, Segment } from "./point";

/** A closed outline of one section; the last point leads back to the first. */
export interface SectionShape {
  /** Its index in the piece's list. A mirrored piece has each section twice. */
  readonly section: number;
  readonly outline: readonly Point[];
  /** Width of its first row, of its last row, and the height of its rows. */
  readonly fromCm: number;
  readonly toCm: number;
  readonly heightCm: number;
  /** What is wrong with the section, null if nothing is. */
  readonly fault: string | null;
}

/** A point where the drawing is uncertain, with the reason. */
export interface ShapeMark {
  readonly at: Point;
  readonly kind: "fault" | "step";
  readonly message: string;
}

/** The line along which a measurement is taken. */
export interface MeasurementLine {
  readonly measurement: string;
  readonly letter: string;
  readonly label: string;
  readonly from: Point;
  readonly to: Point;
  /** The finished measurement, not the line's own length; null where a count that it needs has no number. */
  readonly cm: number | null;
}

/** A piece in one size, to scale: all lengths and positions in cm of finished fabric. */
export interface PieceShape {
  readonly piece: string;
  readonly size: string;
  readonly widthCm: number;
  readonly heightCm: number;
  /** False for a placeholder of arbitrary size: the sections do not determine the piece's shape. */
  readonly isToScale: boolean;
  /** Why it is only a sketch, in sentences; empty if every section is drawn as it is worked. */
  readonly sketchReasons: readonly string[];
  readonly sections: readonly SectionShape[];
  readonly edges: readonly Segment[];
  /** Lines along which one section continues another. */
  readonly joins: readonly Segment[];
  /** The line about which the piece is mirrored. */
  readonly centreLine: Segment | null;
  readonly marks: readonly ShapeMark[];
  readonly lines: readonly MeasurementLine[];
}

/** A shape before its measurement lines. */
export type BareShape = Omit<PieceShape, "lines">;
