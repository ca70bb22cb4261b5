import type { Sum } from "../integer-program";
import { indexPattern, measureTerm, patternWorking, targetCm, type Working } from "../prediction";
import type { Measurement, PatternDocument } from "../pattern";
import type { CountVariables } from "./count-variables";

/**
 * Each solved measurement in each size as a linear combination of counts that should equal its target, in tolerances.
 *
 * @returns rows whose sum minus `right` is the deviation.
 */
export function deviationRows(
  pattern: PatternDocument,
  measurements: readonly Measurement[],
  variables: CountVariables,
): { readonly sum: Sum; readonly right: number }[] {
  const index = indexPattern(pattern);
  return measurements.flatMap((measurement) =>
    pattern.sizes.flatMap((size, position) => {
      const target = targetCm(measurement, size);
      if (target === null) return [];
      const unit: Working = { ...patternWorking(index, size.id), countOf: () => 1 };
      let fixedCm = 0;
      const sum = measurement.terms.flatMap((term) => {
        const { cm } = measureTerm(index, term, unit);
        if ("count" in term)
          return [{ variable: variables.numberOf(term.count, position), weight: cm / measurement.toleranceCm }];
        fixedCm += cm;
        return [];
      });
      return [{ sum, right: (target - fixedCm) / measurement.toleranceCm }];
    }),
  );
}
