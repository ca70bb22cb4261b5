import { formatPath } from "../pattern";
import type { FinishedMeasurementSizes } from "./garment";
import { wholeBodyOf } from "./roles";
import { type SanityRemark, worstSize } from "./sanity-remark";
import { bodyCm, stretchText, stretchedCm, type Stretchable } from "./stretched";

/** A girth that is smaller than the body even when stretched. Lengths may be shorter than the body. */
export function stretchRemarks(garment: Stretchable): SanityRemark[] {
  return garment.measurements.flatMap((made) => {
    const body = made.measurement.girth === true ? wholeBodyOf(made.measurement) : undefined;
    return body === undefined ? [] : remarksOn(garment, made, body);
  });
}

function remarksOn(garment: Stretchable, made: FinishedMeasurementSizes, body: string): SanityRemark[] {
  const { measurement } = made;
  const off = made.sizes.flatMap((one) => {
    const aroundCm = bodyCm(one, body);
    if (one.designCm === null || aroundCm === undefined || one.designCm >= aroundCm) return [];
    const reachCm = stretchedCm(garment, made, one);
    const shortCm = aroundCm - reachCm;
    return shortCm > measurement.toleranceCm ? [{ size: one.size, shortCm, reachCm, aroundCm }] : [];
  });
  const found = worstSize(off);
  if (found === undefined) return [];
  const { formatLength } = garment;
  const { size, reachCm, aroundCm } = found.worst;
  return [
    {
      kind: "ease-and-stretch",
      path: formatPath(["measurements", made.index, "target", "easeCm"]),
      size: size.id,
      says: `In ${size.label}${found.others} “${measurement.label}” must go around ${formatLength(aroundCm)} and reaches ${formatLength(reachCm)} (${stretchText(garment, made)}).`,
    },
  ];
}
