import type { PatternDocument } from "../pattern";
import { armholeRemarks } from "./armhole-remarks";
import { readGarment } from "./garment";
import { gaugeRemarks } from "./gauge-remarks";
import { neckRemarks } from "./neck-remarks";
import { repeatRemarks } from "./repeat-remarks";
import type { FormatLength, SanityRemark } from "./sanity-remark";
import { sizeOrderRemarks } from "./size-order-remarks";
import { stepRemarks } from "./step-remarks";
import { stretchRemarks } from "./stretch-remarks";
import { stretchable } from "./stretched";

/**
 * What a technical editor would ask about a pattern. All of it may be intended: these are remarks, not faults.
 *
 * @param pattern a parsed pattern; counts may still be without values; remarks that need them are skipped.
 * @param formatLength formats a length in cm in the reader's unit.
 * @returns remarks by path, as in faults: sizes, fabrics, counts, then measurements; empty where there is nothing to ask.
 */
export function sanityRemarks(pattern: PatternDocument, formatLength: FormatLength): SanityRemark[] {
  const garment = stretchable(readGarment(pattern, formatLength));
  return [
    ...sizeOrderRemarks(garment),
    ...gaugeRemarks(garment),
    ...repeatRemarks(garment),
    ...armholeRemarks(garment),
    ...neckRemarks(garment),
    ...stretchRemarks(garment),
    ...stepRemarks(garment),
  ];
}
