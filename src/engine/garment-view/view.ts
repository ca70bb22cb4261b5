import type { GarmentFault } from "../garment";
import type { Box, Line, Place } from "./line";

/** Fabric as it is drawn: what is filled, and the lines about it; where pieces overlap later ones lie on top. */
export interface Shape {
  readonly piece: string;
  /** Closed. */
  readonly fabric: Line;
  readonly edges: readonly Line[];
  /** Whether its wrong side is seen, as of a back through the neck of the front. */
  readonly isBehind: boolean;
}

/** Where the tape is laid for a measurement, and its letter. */
export interface Tape {
  readonly measurement: string;
  readonly letter: string;
  readonly label: string;
  /** As finished; null where a count that it needs has no number. */
  readonly cm: number | null;
  readonly from: Place;
  readonly to: Place;
  /** Middle of its letter. */
  readonly letterAt: Place;
}

/** A piece as it is worn, apart from others: what `viewFacts` describes. */
export interface ShownPiece {
  readonly label: string;
  readonly made: number;
  readonly isTube: boolean;
  readonly outline: Line;
  readonly box: Box;
}

/** A drawing in one size, x to the right and y up, cm of finished fabric. */
export interface DrawingView {
  /** Id of its piece, or null: the garment put together. */
  readonly piece: string | null;
  readonly label: string;
  readonly size: string;
  readonly shapes: readonly Shape[];
  /** Lines within the fabric along which pieces meet. */
  readonly joins: readonly Line[];
  readonly tapes: readonly Tape[];
  /** Of all that is drawn, letters too. */
  readonly box: Box;
  /** The pieces in it, in the pattern's order. */
  readonly shows: readonly ShownPiece[];
}

/** The drawings of a garment in one size. */
export interface GarmentView {
  /** Null where it is not known how the pieces are put together. */
  readonly garment: DrawingView | null;
  /** One a piece that has fabric, in the pattern's order; of a mirrored piece its first copy. */
  readonly pieces: readonly DrawingView[];
  readonly faults: readonly GarmentFault[];
}
