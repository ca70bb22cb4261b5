import type { Count, Grading } from "../../pattern";

/** A count to be graded, with what it should come to in each size, cm, at its gauge. */
export interface CountPlan {
  readonly count: Count;
  readonly perCm: number;
  readonly lengthsCm: readonly number[];
}

/** @returns each count rounded to its repeat, by size id. */
export function roundGrading(plans: readonly CountPlan[], sizes: readonly string[]): Grading {
  return Object.fromEntries(
    plans.map(({ count, perCm, lengthsCm }) => {
      const { of, plus } = count.repeat ?? { of: 1, plus: 0 };
      const values = lengthsCm.map((cm) => of * Math.max(1, Math.round((cm * perCm - plus) / of)) + plus);
      return [count.id, Object.fromEntries(sizes.map((size, index) => [size, values[index] ?? of + plus]))];
    }),
  );
}
