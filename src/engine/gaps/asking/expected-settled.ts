import { at } from "../../linear-algebra";
import { variancesOnceLearnt, type JointCells, type ToLearn } from "../../variance-components";
import { chanceSettled } from "../chance-settled";

/** A cell as it is known now, tolerances². */
interface KnownCell {
  /** Which of its size's cells. */
  readonly cell: number;
  readonly isOpen: boolean;
  readonly mean: number;
  /** Of the average over causes, and in the fit with the causes that were found. */
  readonly variance: number;
  readonly fitVariance: number;
  /** That it counts as settled today, by the same sums as afterwards. */
  readonly chanceNow: number;
}

/** What would have to be learnt of a cell for it to count: this share of what is known of it. */
const LEAST_LEARNT = 0.01;

/** The cells of each size, and how all of them hang together in the fit. */
export interface KnownCells {
  readonly bySize: readonly (readonly KnownCell[])[];
  readonly joint: JointCells;
}

/**
 * Expected number of cells that something learnt of one size settles, in that size and in all others, less those that it opens
 * again.
 *
 * As for more testers, what the fit learns of a cell is added to what the average over causes knows of it.
 *
 * @see docs/method.md#what-to-ask-next.
 */
export function expectedSettled({ bySize, joint }: KnownCells, toLearn: ToLearn): number {
  const variancesOf = variancesOnceLearnt(joint, toLearn);
  return bySize.reduce((sum, cells, size) => sum + settledInSize(cells, variancesOf(size)), 0);
}

function settledInSize(cells: readonly KnownCell[], fitVariances: Float64Array): number {
  return cells.reduce((sum, { cell, mean, variance, fitVariance, chanceNow }) => {
    const learnt = 1 / at(fitVariances, cell) - 1 / fitVariance;
    if (!(learnt * variance > LEAST_LEARNT)) return sum;
    const after = chanceSettled({ mean, variance, varianceAfter: 1 / (1 / variance + learnt) });
    return sum + after - chanceNow;
  }, 0);
}
