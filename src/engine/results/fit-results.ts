import { fitModel } from "../fit";
import type { GapsOutput } from "../gaps";
import type { CallDocument } from "../pattern";
import { FIT_SCALE } from "../reporting";
import type { FitResults } from "./call-results-schema";

/**
 * Testers' answers about the fit, counted by area and size, with the ease that feels right and where it does not; areas
 * without an answer are left out.
 *
 * @param call in which excluded readings are set aside. @param output of `gaps` for it.
 */
export function fitResults(call: CallDocument, output: Pick<GapsOutput, "cells" | "variances">): FitResults {
  const { pattern, testers } = call;
  const areas = new Set([
    ...(pattern.bodyMeasurements ?? []).map(({ id }) => id),
    ...pattern.sizes.flatMap(({ body }) => Object.keys(body)),
  ]);
  const { findings, eases } = fitModel(call, output);
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
    findings: [...findings],
    eases: eases.map(({ sizes, ...ease }) => ({ ...ease, sizes: [...sizes] })),
  };
}
