import type { CallDocument, Tester } from "../pattern";
import { chooseSwatch, predict, swatchGauge } from "../prediction";
import type { LeftOut } from "./call-results-schema";

/** Farther than this no garment reaches; a prediction beyond it comes from a number that means something else. */
const MAX_PREDICTED_CM = 100_000;

/**
 * Leaves out reports that nothing can be computed with, such as a swatch of almost no stitches that came in before
 * entry was checked: one of them would spoil the analysis of all others.
 */
export function withoutUnusable(call: CallDocument): {
  readonly usable: CallDocument;
  readonly leftOut: readonly LeftOut[];
} {
  const leftOut = call.testers.flatMap((tester) => {
    const message = whyUnusable(call, tester);
    return message === null ? [] : [{ tester: tester.id, message }];
  });
  if (leftOut.length === 0) return { usable: call, leftOut };
  const left = new Set(leftOut.map(({ tester }) => tester));
  return { usable: { ...call, testers: call.testers.filter(({ id }) => !left.has(id)) }, leftOut };
}

function whyUnusable({ pattern }: CallDocument, tester: Tester): string | null {
  for (const fabric of pattern.fabrics) {
    const swatch = chooseSwatch(tester.swatches, fabric.id);
    if (swatch === undefined) continue;
    const { stitchesPerCm, rowsPerCm } = swatchGauge(swatch);
    if (!isUsable(1 / stitchesPerCm) || !isUsable(1 / rowsPerCm))
      return `The swatch of “${fabric.label}” gives no gauge that could be: ${swatch.stitches} stitches over ${swatch.acrossCm} cm, ${swatch.rows} rows over ${swatch.alongCm} cm.`;
  }
  const { measurements } = predict({ pattern, size: tester.size, tester });
  const wrong = measurements.findIndex(({ predictedCm, spreadCm }) => !isUsable(predictedCm) || !isUsable(spreadCm));
  const label = pattern.measurements[wrong]?.label;
  return label === undefined
    ? null
    : `With these counts and this swatch “${label}” would have no length that could be.`;
}

function isUsable(cm: number): boolean {
  return Number.isFinite(cm) && Math.abs(cm) < MAX_PREDICTED_CM;
}
