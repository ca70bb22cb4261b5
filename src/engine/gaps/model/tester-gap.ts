import type { Measurement } from "../../pattern";
import type { Split } from "../../prediction";

/** One reading of one tester, less the prediction at the tester's gauge. */
export interface TesterGap {
  readonly measurement: number;
  readonly toleranceCm: number;
  readonly cm: number;
  readonly gapCm: number;
  readonly split: Split;
  /** Whether a person has decided that it counts, or with which value. */
  readonly isSure: boolean;
  /** Whether the tester took the measurement more than once. */
  readonly isRepeated: boolean;
}

/** A reading that is just what was predicted. */
export function readingAsPredicted(measurement: number, { toleranceCm }: Measurement, split: Split): TesterGap {
  return { measurement, toleranceCm, cm: split.cm, gapCm: 0, split, isSure: true, isRepeated: false };
}
