import { at, indexAt } from "../linear-algebra";

/** Sizes of one area about which something is asked: from `from` to `to`, both within. */
export interface SizeRange {
  readonly area: number;
  readonly from: number;
  readonly to: number;
}

/** Fewer answers show nothing of a size: two testers may both be unusual. */
export const MIN_ANSWERS = 3;

/**
 * The ranges that are looked at in each area: all sizes, from each size that answered upward, and up to each, where at
 * least three answered; of ranges with the same answers one.
 *
 * @param counts answers by area and size, at `area * sizes + size`.
 */
export function sizeRanges(counts: Int32Array, sizes: number): SizeRange[] {
  const areas = counts.length / sizes;
  return Array.from({ length: areas }, (_, area) => area).flatMap((area) => {
    const countOf = (size: number) => indexAt(counts, area * sizes + size);
    const answered = Array.from({ length: sizes }, (_, size) => size).filter((size) => countOf(size) > 0);
    const ranges = [
      { area, from: 0, to: sizes - 1 },
      ...answered.slice(1).map((from) => ({ area, from, to: sizes - 1 })),
      ...answered.slice(0, -1).map((to) => ({ area, from: 0, to })),
    ];
    return ranges.filter(
      ({ from, to }) =>
        answered.filter((size) => size >= from && size <= to).reduce((sum, size) => sum + countOf(size), 0) >=
        MIN_ANSWERS,
    );
  });
}

/** Sums over the sizes of a range. @param sums by area and size, at `area * sizes + size`. */
export function sumOver({ area, from, to }: SizeRange, sums: Float64Array, sizes: number): number {
  let sum = 0;
  for (let size = from; size <= to; size += 1) sum += at(sums, area * sizes + size);
  return sum;
}
