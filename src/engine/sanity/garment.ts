import type { Measurement, PatternDocument, Size } from "../pattern";
import { finishedMeasurements, indexPattern, type PatternIndex } from "../prediction";
import type { FormatLength } from "./sanity-remark";

/** One size of a finished measurement. */
export interface FinishedSize {
  readonly size: Size;
  /** Null where a count has no value yet. */
  readonly designCm: number | null;
  readonly targetCm: number | null;
}

/** A measurement through all sizes. */
export interface FinishedMeasurementSizes {
  readonly measurement: Measurement;
  /** Its index in the document's list. */
  readonly index: number;
  readonly sizes: readonly FinishedSize[];
}

/** The data for all remarks, computed once. */
export interface Garment {
  readonly pattern: PatternDocument;
  readonly index: PatternIndex;
  readonly measurements: readonly FinishedMeasurementSizes[];
  readonly formatLength: FormatLength;
}

/** Computes a parsed pattern's measurements for the remarks. */
export function readGarment(pattern: PatternDocument, formatLength: FormatLength): Garment {
  const measurements = finishedMeasurements(pattern).map(({ measurement, sizes }, index) => ({
    measurement,
    index,
    sizes: pattern.sizes.map((size, place) => ({
      size,
      designCm: sizes[place]?.designCm ?? null,
      targetCm: sizes[place]?.targetCm ?? null,
    })),
  }));
  return { pattern, index: indexPattern(pattern), measurements, formatLength };
}
