import type { PatternDocument } from "../pattern";
import { indexPattern, patternWorking, workedStitches } from "../prediction";

/** A step that cannot be worked in a size, so that the stitches, and with them the yarn, are those of the rest. */
export interface StitchFault {
  readonly step: string | null;
  readonly size: string;
  readonly says: string;
}

/** What of a garment cannot be worked with the pattern's numbers, in the sizes' order. @param pattern with a number for every count. */
export function stitchFaults(pattern: PatternDocument): StitchFault[] {
  const index = indexPattern(pattern);
  return pattern.sizes.flatMap(({ id: size }) =>
    workedStitches(index, patternWorking(index, size)).faults.map(({ step, message }) => ({
      step,
      size,
      says: message,
    })),
  );
}
