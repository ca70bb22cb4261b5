import type { CallDocument } from "../pattern";
import { statedGauge } from "../prediction";
import { GAUGE_WIDTH_CM } from "../units";
import type { GaugeFinding } from "./gaps-output";

/**
 * The stated gauges; what the swatches say of them waits for the model.
 *
 * @returns one finding a fabric and direction, gauges over 10 cm.
 */
export function gaugeFindings({ pattern, testers }: CallDocument): GaugeFinding[] {
  return pattern.fabrics.flatMap((fabric) => {
    const { stitchesPerCm, rowsPerCm } = statedGauge(fabric);
    const withSwatch = testers.filter(({ swatches }) => swatches.some((swatch) => swatch.fabric === fabric.id)).length;
    const finding = {
      fabric: fabric.id,
      robustMean: null,
      robustSd: null,
      testers: withSwatch,
      verdict: "unsettled",
    } as const;
    return [
      { ...finding, direction: "stitches" as const, stated: stitchesPerCm * GAUGE_WIDTH_CM },
      { ...finding, direction: "rows" as const, stated: rowsPerCm * GAUGE_WIDTH_CM },
    ];
  });
}
