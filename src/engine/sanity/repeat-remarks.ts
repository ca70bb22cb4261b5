import { formatPath, ownValue, type Count, type Size } from "../pattern";
import { measure, patternWorking } from "../prediction";
import type { Garment, FinishedMeasurementSizes } from "./garment";
import type { SanityRemark } from "./sanity-remark";

/** A size's target for a count: cm per stitch or row, and the ideal number. */
interface SizeTarget {
  readonly size: Size;
  readonly eachCm: number;
  readonly idealCount: number;
}

/** Shorter lengths are rounding errors, cm. */
const ROUNDING_CM = 1e-9;

/** Largest repeat that is tried. */
const MAX_REPEAT = 1_000;

/**
 * A repeat so large that a measurement cannot be within tolerance of its target in some size, with the largest
 * repeat that works. Only for measurements that depend on that count alone, because other counts could compensate.
 */
export function repeatRemarks(garment: Garment): SanityRemark[] {
  const { pattern, measurements } = garment;
  return pattern.counts.flatMap((count, index) =>
    measurements.flatMap((one) => (onlyCount(one) === count.id ? remarksOn(garment, one, { count, index }) : [])),
  );
}

/** The only count that a measurement depends on. */
function onlyCount({ measurement }: FinishedMeasurementSizes): string | undefined {
  const counts = new Set<string>();
  for (const term of measurement.terms) {
    if ("diagonal" in term) return undefined;
    if ("count" in term) counts.add(term.count);
  }
  const [only] = counts;
  return counts.size === 1 ? only : undefined;
}

function remarksOn(
  garment: Garment,
  made: FinishedMeasurementSizes,
  { count, index }: { readonly count: Count; readonly index: number },
): SanityRemark[] {
  const { label, toleranceCm } = made.measurement;
  const { of = 1, plus = 0 } = count.repeat ?? {};
  const wishes = sizeTargets(garment, made, count);
  const failing = wishes.filter((wish) => !isMet(wish, { count, of, toleranceCm }));
  if (failing.length === 0) return [];
  const finer = largestRepeatThatMeets(wishes, { count, of, toleranceCm });
  const sizes = failing.map(({ size }) => size.label).join(", ");
  const within = garment.formatLength(toleranceCm);
  const advice =
    finer === undefined
      ? `Not even single ${count.direction} can: widen the tolerance, or look at the target.`
      : `A ${multiple(finer, plus)} does in every size.`;
  const such = of === 1 ? "whole number" : multiple(of, plus);
  return [
    {
      kind: "coarse-repeat",
      path: formatPath(of === 1 ? ["counts", index] : ["counts", index, "repeat", "of"]),
      ...(failing[0] === undefined ? {} : { size: failing[0].size.id }),
      says: `No ${such} of “${count.label}” brings “${label}” within ${within} of its target in ${sizes}. ${advice}`,
    },
  ];
}

function multiple(of: number, plus: number): string {
  return `multiple of ${of}${plus > 0 ? ` + ${plus}` : ""}`;
}

function sizeTargets({ index }: Garment, { measurement, sizes }: FinishedMeasurementSizes, count: Count): SizeTarget[] {
  return sizes.flatMap(({ size, targetCm }) => {
    if (targetCm === null || ownValue(count.locked, size.id) !== undefined) return [];
    const withCount = (value: number) =>
      measure(index, measurement, { ...patternWorking(index, size.id), countOf: () => value }).cm;
    const restCm = withCount(0);
    const eachCm = withCount(1) - restCm;
    return Math.abs(eachCm) < ROUNDING_CM ? [] : [{ size, eachCm, idealCount: (targetCm - restCm) / eachCm }];
  });
}

interface Rule {
  readonly count: Count;
  readonly of: number;
  readonly toleranceCm: number;
}

/** Whether the nearest number allowed by the repeat and the minimum value is within tolerance. */
function isMet({ eachCm, idealCount }: SizeTarget, { count, of, toleranceCm }: Rule): boolean {
  const plus = count.repeat?.plus ?? 0;
  const leastRepeats = Math.ceil(((count.least ?? 1) - plus) / of);
  const repeats = Math.max(leastRepeats, Math.round((idealCount - plus) / of));
  return Math.abs((repeats * of + plus - idealCount) * eachCm) <= toleranceCm + ROUNDING_CM;
}

function largestRepeatThatMeets(wishes: readonly SizeTarget[], rule: Rule): number | undefined {
  for (let of = Math.min(rule.of - 1, MAX_REPEAT); of >= 1; of -= 1) {
    if (wishes.every((wish) => isMet(wish, { ...rule, of }))) return of;
  }
  return undefined;
}
