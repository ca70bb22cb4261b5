import type { PatternDocument } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import type { ProgressRow } from "./progress-data";

/** What a tester's gauge alone does to the measurement that it moves most, beyond one tolerance of it. */
export interface SwatchEffect {
  readonly label: string;
  readonly cm: number;
}

/** Null where nothing is moved beyond its tolerance, or no swatch is known of the size that is worked. */
export function swatchEffect({ report, size, code }: ProgressRow, pattern: PatternDocument): SwatchEffect | null {
  const known = pattern.sizes.some(({ id }) => id === size);
  if (report === null || report.document.swatches.length === 0 || !known || report.document.size !== size) return null;
  const { measurements } = predict({ pattern, size, tester: { id: code, ...report.document } });
  const moved = measurements.flatMap(({ measurement, workedCm, predictedCm }) => {
    const found = pattern.measurements.find(({ id }) => id === measurement);
    const cm = predictedCm - workedCm;
    return found === undefined || Math.abs(cm) <= found.toleranceCm
      ? []
      : [{ label: found.label, cm, inTolerances: Math.abs(cm) / found.toleranceCm }];
  });
  const [most] = moved.toSorted((left, right) => right.inTolerances - left.inTolerances);
  return most === undefined ? null : { label: most.label, cm: most.cm };
}
