import { sizeScale, type PatternDocument } from "../pattern";
import { solveSurface, surfacePosterior } from "../variance-components";
import { chanceSettled } from "./chance-settled";
import { SD_INDEX } from "./model/gap-sds";
import { gapSurface } from "./model/gap-surface";
import { nextTester } from "./model/next-tester";
import { testerInformation } from "./model/tester-on-gauge";
import { MIN_CHANCE } from "./testers-to-settle";

const MAX_TESTERS = 30;
/** Medians of the priors of the six sds (0.674 of a half-normal's scale). */
const PRIOR_MEDIAN_SDS = Float64Array.of(0.54, 0.34, 0.27, 0.022, 0.022, 0.5);

/**
 * Before a call: how many testers per size settle a cell in four cases in five.
 *
 * Settled means a verdict of off or holds. The chance is the mean over all cells, for an error of the pattern as large as
 * is usual and testers who leave out as much as is usual.
 *
 * @returns testers per size; null if thirty are not enough.
 * @see docs/method.md#how-many-testers.
 */
export function testersNeeded(pattern: PatternDocument): number | null {
  if (pattern.measurements.length === 0) return null;
  const perTester = informationPerTester(pattern);
  for (let testers = 1; testers <= MAX_TESTERS; testers += 1) {
    if (power(pattern, { perTester, testers }) >= MIN_CHANCE) return testers;
  }
  return null;
}

/**
 * The chance that a cell is settled with so many testers in each size: the same as `testersNeeded` asks to be 0.8.
 *
 * @param testers whole, 1 or more.
 * @returns from 0 to 1; null for a pattern without measurements.
 */
export function powerOfTesters(pattern: PatternDocument, testers: number): number | null {
  if (pattern.measurements.length === 0) return null;
  return power(pattern, { perTester: informationPerTester(pattern), testers });
}

function informationPerTester(pattern: PatternDocument): Float64Array[] {
  const next = nextTester({ pattern, testers: [] });
  return pattern.sizes.map((size) => {
    const information = testerInformation(pattern, size, { sds: PRIOR_MEDIAN_SDS, ...next });
    return information.map((value) => next.chanceReported * value);
  });
}

function power(
  pattern: PatternDocument,
  { perTester, testers }: { perTester: readonly Float64Array[]; testers: number },
): number {
  const cells = pattern.measurements.length;
  const none = Array.from(PRIOR_MEDIAN_SDS, () => undefined);
  const groups = perTester.map((precision) => ({
    cells,
    precision: precision.map((value) => testers * value),
    lowRank: null,
    right: new Float64Array(cells),
    precisionSlopes: none,
    rightSlopes: none,
  }));
  const zeros = new Float64Array(PRIOR_MEDIAN_SDS.length);
  const information = { groups, readings: 0, constant: 0, traceSlopes: zeros, squareSlopes: zeros };
  const solution = solveSurface(gapSurface(pattern, []), information, PRIOR_MEDIAN_SDS);
  if (solution === null) return 0;
  const scale = sizeScale(pattern);
  const chances = surfacePosterior(solution).groups.flatMap(({ covariance }, s) => {
    const z = scale.get(pattern.sizes[s]?.id ?? "") ?? 0;
    return pattern.measurements.map((_, p) =>
      chanceSettled({
        mean: 0,
        variance: priorVariance(z),
        varianceAfter: covariance[p * cells + p] ?? Number.NaN,
      }),
    );
  });
  return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
}

function priorVariance(z: number): number {
  const square = (index: number) => (PRIOR_MEDIAN_SDS[index] ?? Number.NaN) ** 2;
  return square(SD_INDEX.offset) + square(SD_INDEX.step) * z * z + square(SD_INDEX.cell);
}
