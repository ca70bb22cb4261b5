import { chanceSettled } from "./chance-settled";

/** Chance with which a number of testers is to settle a cell: four cases in five (docs/method.md#how-many-testers). */
export const MIN_CHANCE = 0.8;

/** A cell whose verdict is open, in tolerances. */
interface OpenCell {
  readonly mean: number;
  /** Of the average over causes. */
  readonly variance: number;
  /** In one fit: with 0, 1, 2, … more testers of the size who measure it. */
  readonly variancesWithMore: readonly number[];
  /** Chance that a tester measures what they are asked to. */
  readonly chanceReported: number;
}

/** As many testers as can mostly be found for a size. */
const A_FEW = 3;

/** What more testers of the size would do for a verdict. */
interface Settling {
  /** How many settle it in four cases in five; null where as many as are tried do not. */
  readonly testersToSettle: number | null;
  /** Chance that three settle it; null where it is not known. */
  readonly chanceWithThree: number | null;
}

/**
 * How many more testers of the size will settle the verdict in four cases in five, and how often three will.
 *
 * @see docs/method.md#how-many-testers.
 */
export function settling({ mean, variance, variancesWithMore, chanceReported }: OpenCell): Settling {
  const now = 1 / (variancesWithMore[0] ?? Number.NaN);
  const chanceWith = (testers: number) => {
    const withMore = variancesWithMore[testers] ?? Number.NaN;
    const varianceAfter = 1 / (1 / variance + Math.max(0, 1 / withMore - now));
    return chanceSettled({ mean, variance, varianceAfter });
  };
  const most = variancesWithMore.length - 1;
  if (most < A_FEW) return { testersToSettle: null, chanceWithThree: null };
  const chances = Array.from({ length: A_FEW + 1 }, (_, testers) => chanceWith(testers));
  const chanceWithThree = expectedOver(chances, chanceReported);
  if (!(chanceWith(most) >= MIN_CHANCE)) return { testersToSettle: null, chanceWithThree };
  for (let testers = 1; testers <= most; testers += 1) {
    if (testers > A_FEW) chances.push(chanceWith(testers));
    if (expectedOver(chances.slice(0, testers + 1), chanceReported) >= MIN_CHANCE)
      return { testersToSettle: testers, chanceWithThree };
  }
  return { testersToSettle: null, chanceWithThree };
}

/** Mean of `values[k]` where k of `values.length` − 1 testers report, each with the same chance. */
function expectedOver(values: readonly number[], chance: number): number {
  const testers = values.length - 1;
  let ways = 1;
  let mean = 0;
  for (let reported = 0; reported <= testers; reported += 1) {
    mean += ways * chance ** reported * (1 - chance) ** (testers - reported) * (values[reported] ?? 0);
    ways = (ways * (testers - reported)) / (reported + 1);
  }
  return mean;
}
