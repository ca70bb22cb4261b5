import { cmOfSize, ownValue, type Measurement, type Size } from "../pattern";

/**
 * Target of a measurement in a size: share × body + ease, or the given length.
 *
 * @returns cm, null where the measurement has no target.
 */
export function targetCm(measurement: Measurement, size: Size): number | null {
  const target = measurement.target;
  if (target === undefined) return null;
  if ("cm" in target) return cmOfSize(target.cm, size.id);
  const body = ownValue(size.body, target.body);
  if (body === undefined) return null;
  return (target.share ?? 1) * body + cmOfSize(target.easeCm, size.id);
}
