import { formatPath, ownValue } from "../pattern";
import type { Garment } from "./garment";
import type { SanityRemark } from "./sanity-remark";

/** Sizes that are not in ascending order of body: a smaller one after a larger, or two equal ones. */
export function sizeOrderRemarks({ pattern, formatLength }: Garment): SanityRemark[] {
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
