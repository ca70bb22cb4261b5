import { formatPath } from "../pattern";
import type { Garment, FinishedMeasurementSizes } from "./garment";
import { isUpperArmGirth, timesInArmhole } from "./roles";
import { type SanityRemark, worstSize } from "./sanity-remark";

/**
 * A sleeve that is wider at the upper arm than the armhole it goes into.
 *
 * An armhole's girth is at least twice its depth, straight down the front and up the back. No remark if a
 * pattern has more than one armhole measurement, because it is unknown how they combine.
 */
export function armholeRemarks(garment: Garment): SanityRemark[] {
  const [armhole, ...more] = garment.measurements.filter(({ measurement }) => timesInArmhole(measurement) > 0);
  if (armhole === undefined || more.length > 0) return [];
  const sleeves = garment.measurements.filter(({ measurement }) => isUpperArmGirth(measurement));
  return sleeves.flatMap((sleeve) => sleeveRemarks(garment, sleeve, armhole));
}

function sleeveRemarks(
  { formatLength }: Garment,
  sleeve: FinishedMeasurementSizes,
  armhole: FinishedMeasurementSizes,
): SanityRemark[] {
  const times = timesInArmhole(armhole.measurement);
  const toleranceCm = sleeve.measurement.toleranceCm + times * armhole.measurement.toleranceCm;
  const off = sleeve.sizes.flatMap(({ size, designCm: sleeveCm }, index) => {
    const deepCm = armhole.sizes[index]?.designCm ?? null;
    if (sleeveCm === null || deepCm === null) return [];
    const shortCm = sleeveCm - times * deepCm;
    return shortCm > toleranceCm ? [{ size, shortCm, sleeveCm, armholeCm: times * deepCm }] : [];
  });
  const found = worstSize(off);
  if (found === undefined) return [];
  const { size, sleeveCm, armholeCm } = found.worst;
  const about = times === 2 ? ", twice its depth" : "";
  return [
    {
      kind: "sleeve-and-armhole",
      path: formatPath(["measurements", sleeve.index]),
      size: size.id,
      says: `In ${size.label}${found.others} the sleeve is ${formatLength(sleeveCm)} around at the upper arm and the armhole about ${formatLength(armholeCm)}${about}. Unless stitches are added at the underarm, the sleeve does not fit into it.`,
    },
  ];
}
