import type { PatternDocument } from "../pattern";
import type { TableFault } from "./cells";

/** Where a finished measurement comes from. */
interface Basis {
  readonly workedIn: "stitches" | "rows" | "ruler";
  /** Row of its count; null if the count is calculated, or if it is worked to a length. */
  readonly countRow: number | null;
  readonly times: number;
}

/** A finished measurement as read: numbers by size, in the columns' order. */
export interface ReadMeasurement extends Basis {
  readonly row: number;
  readonly letter: string;
  readonly label: string;
  readonly girth: boolean;
  readonly toleranceCm: number;
  readonly cm: readonly number[];
}

/** A row of whole numbers as read. */
export interface ReadCount {
  readonly row: number;
  readonly label: string;
  readonly direction: "stitches" | "rows";
  readonly values: readonly number[];
}

export interface ReadBody {
  readonly row: number;
  readonly label: string;
  readonly cm: readonly number[];
}

export interface ReadGauge {
  readonly stitches: number;
  readonly rows: number;
  readonly overCm: number;
}

/** Breakdown of one measurement's published numbers, in the sizes' order. */
export interface Breakdown extends Basis {
  readonly row: number;
  readonly measurement: string;
  readonly countLabel: string | null;
  readonly counts: readonly number[];
  /** times × count at the gauge. */
  readonly countedCm: readonly number[];
  /** The remainder of the published number: edgings, seams, rounding. */
  readonly restCm: readonly number[];
}

export type MeasurementTable =
  | {
      readonly ok: true;
      readonly pattern: PatternDocument;
      readonly breakdowns: readonly Breakdown[];
      /** Questions that the designer has to confirm. */
      readonly questions: readonly TableFault[];
      /** Assumptions that were made, in sentences. */
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly TableFault[] };
