import { algorithmA } from "../consistency";
import { studentTChance } from "../distributions";
import { statedGauge, type CallDocument, type Fabric, type Swatch } from "../pattern";
import { chooseSwatch, swatchGauge, swatchUncertainty } from "../prediction";
import { GAUGE_WIDTH_CM } from "../units";
import type { GaugeFinding } from "./gaps-output";

/** Relative difference between the testers' and the stated gauge that counts as equal (common practice, no source). */
const GAUGE_TOLERANCE = 0.03;
const MIN_PROBABILITY_AS_STATED = 0.9;
const MIN_PROBABILITY_OF_SIDE = 0.95;
/** With fewer swatches there is no verdict on the stated gauge. */
const MIN_TESTERS = 3;
/** Standard error of a robust mean relative to that of an ordinary mean (ISO 13528:2015, 7.7). */
const ROBUST_ERROR_FACTOR = 1.25;

/**
 * Compares the stated gauges with the testers' swatches made with the recommended needle or hook.
 *
 * @param call in which excluded swatches are set aside.
 * @returns one finding per fabric and direction, gauges over 10 cm.
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
  const readingError = Math.sqrt(readingVariance) / swatches.length;
  const standardError = Math.max((ROBUST_ERROR_FACTOR * sd) / Math.sqrt(swatches.length), readingError);
  return {
    ...finding,
    robustMean: mean,
    robustSd: swatches.length > 1 ? sd : null,
    verdict: gaugeVerdict({ ratio: mean / stated, standardError: standardError / stated, testers: swatches.length }),
  };
}

function gaugeVerdict(given: { ratio: number; standardError: number; testers: number }): GaugeFinding["verdict"] {
  const { ratio, standardError, testers } = given;
  if (testers < MIN_TESTERS) return "unsettled";
  const chanceBelow = (bound: number) => studentTChance((bound - ratio) / standardError, testers - 1);
  if (chanceBelow(1 + GAUGE_TOLERANCE) - chanceBelow(1 - GAUGE_TOLERANCE) >= MIN_PROBABILITY_AS_STATED)
    return "as stated";
  if (1 - chanceBelow(1) >= MIN_PROBABILITY_OF_SIDE) return "tighter";
  return chanceBelow(1) >= MIN_PROBABILITY_OF_SIDE ? "looser" : "unsettled";
}
