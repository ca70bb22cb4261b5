import type { KnownPrediction } from "../gaps";
import type { CallDocument, Tester } from "../pattern";
import { chooseSwatch, predict, swatchGauge, type Prediction } from "../prediction";
import type { LeftOut } from "./call-results-schema";

/** No garment is larger; a larger prediction comes from a wrong number. */
const MAX_PREDICTED_CM = 100_000;

export interface UsableCall {
  readonly usable: CallDocument;
  /** What each usable report predicts, by the tester's id. */
  readonly predictions: ReadonlyMap<string, KnownPrediction>;
  readonly leftOut: readonly LeftOut[];
}

/**
 * Leaves out reports that cannot be computed, such as one with a swatch of almost no stitches that was stored before
 * entries were checked: one of them would distort the analysis of all others.
 */
export function withoutUnusable(call: CallDocument): UsableCall {
  const predictions = new Map<string, KnownPrediction>();
  const leftOut: LeftOut[] = [];
  for (const tester of call.testers) {
    const found = predictionOf(call, tester);
    if (typeof found === "string") leftOut.push({ tester: tester.id, message: found });
    else predictions.set(tester.id, { tester, prediction: found });
  }
  if (leftOut.length === 0) return { usable: call, predictions, leftOut };
  return { usable: { ...call, testers: call.testers.filter(({ id }) => predictions.has(id)) }, predictions, leftOut };
}

/** The prediction of a report, or why it cannot be computed. */
function predictionOf({ pattern }: CallDocument, tester: Tester): Prediction | string {
  for (const fabric of pattern.fabrics) {
    const swatch = chooseSwatch(tester.swatches, fabric.id);
    if (swatch === undefined) continue;
    const { stitchesPerCm, rowsPerCm } = swatchGauge(swatch);
    if (!isUsable(1 / stitchesPerCm) || !isUsable(1 / rowsPerCm))
      return `The swatch of “${fabric.label}” gives an impossible gauge: ${swatch.stitches} stitches over ${swatch.acrossCm} cm, ${swatch.rows} rows over ${swatch.alongCm} cm.`;
  }
  const prediction = predict({ pattern, size: tester.size, tester });
  const wrong = prediction.measurements.findIndex(
    ({ predictedCm, spreadCm }) => !isUsable(predictedCm) || !isUsable(spreadCm),
  );
  const label = pattern.measurements[wrong]?.label;
  if (label === undefined) return prediction;
  return `With these counts and this swatch “${label}” would have an impossible length.`;
}

function isUsable(cm: number): boolean {
  return Number.isFinite(cm) && Math.abs(cm) < MAX_PREDICTED_CM;
}
