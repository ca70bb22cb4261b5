import { formatPath, ownValue } from "../pattern";
import { ASTM_D5585_2011, BODY, sizesFromTable } from "../trade-tables";
import type { FinishedMeasurementSizes, FinishedSize } from "./garment";
import { isNeckGirth } from "./roles";
import { type SanityRemark, worstSize } from "./sanity-remark";
import { bodyCm, stretchText, stretchedCm, type Stretchable } from "./stretched";

const HEADS = sizesFromTable(ASTM_D5585_2011, { measurements: [BODY.head.id] }).sizes;

/** A neck that is too small for the head even when stretched. */
export function neckRemarks(garment: Stretchable): SanityRemark[] {
  return garment.measurements
    .filter(({ measurement }) => isNeckGirth(measurement))
    .flatMap((neck) => remarksOn(garment, neck));
}

function remarksOn(garment: Stretchable, neck: FinishedMeasurementSizes): SanityRemark[] {
  const off = neck.sizes.flatMap((made) => {
    const headCm = headOf(made);
    if (made.designCm === null || headCm === undefined) return [];
    const reachCm = stretchedCm(garment, neck, made);
    const shortCm = headCm - reachCm;
    return shortCm > neck.measurement.toleranceCm ? [{ size: made.size, shortCm, reachCm, headCm }] : [];
  });
  const found = worstSize(off);
  if (found === undefined) return [];
  const { formatLength } = garment;
  const { size, reachCm, headCm } = found.worst;
  return [
    {
      kind: "neck-and-head",
      path: formatPath(["measurements", neck.index]),
      size: size.id,
      says: `In ${size.label}${found.others} the neck reaches ${formatLength(reachCm)} (${stretchText(garment, neck)}), and a head of ${formatLength(headCm)} must pass it. Unless it opens, it is too small to put on.`,
    },
  ];
}

/**
 * The head that goes with a size: its own where the pattern has one, else that of ASTM D5585-11 (read) at the next
 * smaller bust. Undefined for a bust below that table's, which may be a child's, and where the pattern has no bust.
 */
function headOf(made: FinishedSize): number | undefined {
  const own = bodyCm(made, BODY.head.id);
  if (own !== undefined) return own;
  const bustCm = bodyCm(made, BODY.bust.id);
  if (bustCm === undefined) return undefined;
  return headAtBust(bustCm);
}

function headAtBust(bustCm: number): number | undefined {
  const row = HEADS.findLast(({ body }) => (ownValue(body, BODY.bust.id) ?? Infinity) <= bustCm);
  return ownValue(row?.body, BODY.head.id);
}
