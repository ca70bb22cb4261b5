import { algorithmA } from "../consistency";
import { studentTChance } from "../distributions";
import type { CallDocument, Fabric, Swatch } from "../pattern";
import { chooseSwatch, statedGauge, swatchGauge, swatchUncertainty } from "../prediction";
import { GAUGE_WIDTH_CM } from "../units";
import type { GaugeFinding } from "./gaps-output";

/** A stated gauge stands while the testers' is within this of it, relative (common practice, no source). */
const BAND = 0.03;
const SURE = 0.9;
const SURE_OF_SIDE = 0.95;
/** Fewer swatches say nothing of the stated gauge. */
const LEAST_TESTERS = 3;
/** Standard error of a robust mean, beside that of a plain one (ISO 13528:2015, 7.7). */
const ROBUST_ERROR_FACTOR = 1.25;

/**
 * What the testers' swatches say of the stated gauges, taken at the recommended tool.
 *
 * @param call with swatches that do not count set aside.
 * @returns one finding a fabric and direction, gauges over 10 cm.
 * @see ISO 13528:2015, Algorithm A; docs/method.md#stated-gauge.
 */
export function gaugeFindings({ pattern, testers }: CallDocument): GaugeFinding[] {
  return pattern.fabrics.flatMap((fabric) => {
    const swatches = testers.flatMap((tester) => {
      const atTool = tester.swatches.filter(({ toolMm }) => toolMm === fabric.toolMm);
      const swatch = chooseSwatch(atTool, fabric.id);
      return swatch ? [swatch] : [];
    });
    return [gaugeFinding(fabric, swatches, "stitches"), gaugeFinding(fabric, swatches, "rows")];
  });
}

function gaugeFinding(fabric: Fabric, swatches: readonly Swatch[], direction: "stitches" | "rows"): GaugeFinding {
  const key = direction === "stitches" ? "stitchesPerCm" : "rowsPerCm";
  const stated = statedGauge(fabric)[key] * GAUGE_WIDTH_CM;
  const finding = { fabric: fabric.id, direction, stated, testers: swatches.length };
  if (swatches.length === 0) return { ...finding, robustMean: null, robustSd: null, verdict: "unsettled" };
  const { mean, sd } = algorithmA(swatches.map((swatch) => swatchGauge(swatch)[key] * GAUGE_WIDTH_CM));
  const readingVariance = swatches.reduce((sum, swatch) => sum + (mean * swatchUncertainty(swatch)[direction]) ** 2, 0);
  const least = Math.sqrt(readingVariance) / swatches.length;
  const standardError = Math.max((ROBUST_ERROR_FACTOR * sd) / Math.sqrt(swatches.length), least);
  return {
    ...finding,
    robustMean: mean,
    robustSd: swatches.length > 1 ? sd : null,
    verdict: gaugeVerdict({ ratio: mean / stated, standardError: standardError / stated, testers: swatches.length }),
  };
}

function gaugeVerdict(given: { ratio: number; standardError: number; testers: number }): GaugeFinding["verdict"] {
  const { ratio, standardError, testers } = given;
  if (testers < LEAST_TESTERS) return "unsettled";
  const chanceBelow = (bound: number) => studentTChance((bound - ratio) / standardError, testers - 1);
  if (chanceBelow(1 + BAND) - chanceBelow(1 - BAND) >= SURE) return "as stated";
  if (1 - chanceBelow(1) >= SURE_OF_SIDE) return "tighter";
  return chanceBelow(1) >= SURE_OF_SIDE ? "looser" : "unsettled";
}
