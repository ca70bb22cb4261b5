import type { Measurement, PatternDocument, Size } from "../pattern";
import { finishedMeasurements, indexPattern, type PatternIndex } from "../prediction";
import type { LengthWords } from "./sanity-remark";

/** One size of a finished measurement. */
export interface MadeSize {
  readonly size: Size;
  /** Null where a count has no value yet. */
  readonly designCm: number | null;
  readonly targetCm: number | null;
}

/** A measurement through all sizes. */
export interface Made {
  readonly measurement: Measurement;
  /** Its place in the document's list. */
  readonly at: number;
  readonly sizes: readonly MadeSize[];
}

/** What every remark looks at, reckoned once. */
export interface Garment {
  readonly pattern: PatternDocument;
  readonly index: PatternIndex;
  readonly made: readonly Made[];
  readonly lengthWords: LengthWords;
}

/** Reckons a parsed pattern's measurements for the remarks. */
export function readGarment(pattern: PatternDocument, lengthWords: LengthWords): Garment {
  const made = finishedMeasurements(pattern).map(({ measurement, sizes }, at) => ({
    measurement,
    at,
    sizes: pattern.sizes.map((size, place) => ({
      size,
      designCm: sizes[place]?.designCm ?? null,
      targetCm: sizes[place]?.targetCm ?? null,
    })),
  }));
  return { pattern, index: indexPattern(pattern), made, lengthWords };
}
