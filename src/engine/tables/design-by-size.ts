import { missingGrading, type PatternDocument } from "../pattern";
import { predict } from "../prediction";

/** The pattern's measurements, cm by size and measurement; empty if a count has no value yet. */
export function designBySize(pattern: PatternDocument): ReadonlyMap<string, ReadonlyMap<string, number>> {
  if (missingGrading(pattern).length > 0) return new Map();
  return new Map(
    pattern.sizes.map(({ id }) => {
      const { measurements } = predict({ pattern, size: id });
      return [id, new Map(measurements.map(({ measurement, designCm }) => [measurement, designCm]))];
    }),
  );
}
