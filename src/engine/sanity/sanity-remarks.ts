import { type PatternDocument, formatPath, ownValue } from "../pattern";
import { armholeRemarks } from "./armhole-remarks";
import { readGarment, type Garment } from "./garment";
import { gaugeRemarks } from "./gauge-remarks";
import { neckRemarks } from "./neck-remarks";
import { repeatRemarks } from "./repeat-remarks";
import type { FormatLength, SanityRemark } from "./sanity-remark";
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

/** Sizes that are not in ascending order of body: a smaller one after a larger, or two equal ones. */
function sizeOrderRemarks({ pattern, formatLength }: Garment): SanityRemark[] {
  const { sizes, sizeBy, bodyMeasurements = [] } = pattern;
  const body = bodyMeasurements.find(({ id }) => id === sizeBy)?.label ?? sizeBy;
  return sizes.flatMap((size, index) => {
    const before = sizes[index - 1];
    const [cm, beforeCm] = [ownValue(size.body, sizeBy), ownValue(before?.body, sizeBy)];
    if (before === undefined || cm === undefined || beforeCm === undefined || cm > beforeCm) return [];
    const says =
      cm === beforeCm
        ? `${before.label} and ${size.label} are both for “${body}” of ${formatLength(cm)}: nobody can choose between them by it.`
        : `${size.label} is for “${body}” of ${formatLength(cm)} and stands after ${before.label} of ${formatLength(beforeCm)}. Sizes stand smallest first.`;
    return [{ kind: "size-order" as const, path: formatPath(["sizes", index, "body", sizeBy]), size: size.id, says }];
  });
}
