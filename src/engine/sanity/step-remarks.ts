import { formatPath, ownValue } from "../pattern";
import type { Garment, FinishedMeasurementSizes, FinishedSize } from "./garment";
import type { SanityRemark } from "./sanity-remark";

/**
 * A step between two sizes that differs from the step of the body.
 *
 * Rounding to whole stitches may put each of two neighbours off by one tolerance, so a step may be off by two.
 */
export function stepRemarks(garment: Garment): SanityRemark[] {
  return garment.measurements.flatMap((made) =>
    made.sizes.flatMap((larger, index) => {
      const smaller = made.sizes[index - 1];
      return smaller === undefined ? [] : remarksOn(garment, made, { smaller, larger });
    }),
  );
}

function remarksOn(
  { formatLength }: Garment,
  { measurement, index }: FinishedMeasurementSizes,
  { smaller, larger }: { readonly smaller: FinishedSize; readonly larger: FinishedSize },
): SanityRemark[] {
  const { target, label, toleranceCm } = measurement;
  if (target === undefined || !("body" in target)) return [];
  const [from, to] = [finishedCm(smaller), finishedCm(larger)];
  const [bodyFrom, bodyTo] = [ownValue(smaller.size.body, target.body), ownValue(larger.size.body, target.body)];
  if (from === null || to === null || bodyFrom === undefined || bodyTo === undefined) return [];
  const share = target.share ?? 1;
  const stepCm = to - from;
  const bodyStepCm = share * (bodyTo - bodyFrom);
  if (Math.abs(stepCm - bodyStepCm) <= 2 * toleranceCm) return [];
  const body = share === 1 ? "the body" : "its share of the body";
  return [
    {
      kind: "step-and-body",
      path: formatPath(["measurements", index]),
      size: larger.size.id,
      says: `From ${smaller.size.label} to ${larger.size.label}, “${label}” ${changes(stepCm, formatLength)} while ${body} ${changes(bodyStepCm, formatLength)}.`,
    },
  ];
}

function finishedCm({ designCm, targetCm }: FinishedSize): number | null {
  return designCm ?? targetCm;
}

function changes(stepCm: number, formatLength: (cm: number) => string): string {
  if (stepCm === 0) return "stays the same";
  return `${stepCm > 0 ? "grows" : "shrinks"} by ${formatLength(Math.abs(stepCm))}`;
}
