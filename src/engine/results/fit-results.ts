import { fitFindings, type Cell } from "../gaps";
import type { CallDocument } from "../pattern";
import { FIT_SCALE } from "../reporting";
import type { FitResults } from "./call-results-schema";

/** Testers' answers about the fit, counted by area and size; areas without an answer are left out. */
export function fitResults(call: CallDocument, cells: readonly Cell[]): FitResults {
  const { pattern, testers } = call;
  const areas = new Set([
    ...(pattern.bodyMeasurements ?? []).map(({ id }) => id),
    ...pattern.sizes.flatMap(({ body }) => Object.keys(body)),
  ]);
  return {
    areas: [...areas].flatMap((area) => {
      const answersBySize = pattern.sizes.map(({ id }) => {
        const scales = testers
          .filter(({ size }) => size === id)
          .flatMap(({ fit = [] }) => fit.filter((answer) => answer.area === area).map(({ scale }) => scale));
        return FIT_SCALE.map((step) => scales.filter((scale) => scale === step).length);
      });
      return answersBySize.some((counts) => counts.some((count) => count > 0)) ? [{ area, answersBySize }] : [];
    }),
    findings: fitFindings(call, cells),
  };
}
