import { normalChance } from "../distributions";
import { sizeScale, type PatternDocument } from "../pattern";
import { solveSurface, surfacePosterior } from "../variance-components";
import { SD_INDEX } from "./model/gap-sds";
import { gapSurface } from "./model/gap-surface";
import { testerInformation } from "./model/tester-on-gauge";

/** The error to detect, in tolerances, and the required power (docs/method.md#how-many-testers). */
const ERROR_TO_DETECT = 1.5;
const MIN_POWER = 0.8;
const MAX_TESTERS = 30;
/** Medians of the priors of the six sds (0.674 of a half-normal's scale). */
const PRIOR_MEDIAN_SDS = Float64Array.of(0.54, 0.34, 0.27, 0.022, 0.022, 0.5);

/**
 * Power calculation before a call: how many testers per size detect an error of 1½ tolerances with a power of 0.8.
 *
 * Detected means reported as off or leaning: the estimate exceeds one tolerance. The power is the mean over all cells, for
 * testers on gauge who take all measurements.
 *
 * @returns testers per size; null if thirty are not enough.
 * @see docs/method.md#how-many-testers.
 */
export function testersNeeded(pattern: PatternDocument): number | null {
  if (pattern.measurements.length === 0) return null;
  const perTester = informationPerTester(pattern);
  for (let testers = 1; testers <= MAX_TESTERS; testers += 1) {
    if (power(pattern, { perTester, testers }) >= MIN_POWER) return testers;
  }
  return null;
}

/**
 * The power with so many testers in each size: the same as `testersNeeded` asks to be 0.8.
 *
 * @param testers whole, 1 or more.
 * @returns from 0 to 1; null for a pattern without measurements.
 */
export function powerOfTesters(pattern: PatternDocument, testers: number): number | null {
  if (pattern.measurements.length === 0) return null;
  return power(pattern, { perTester: informationPerTester(pattern), testers });
}

function informationPerTester(pattern: PatternDocument): Float64Array[] {
  return pattern.sizes.map((size) => testerInformation(pattern, size, PRIOR_MEDIAN_SDS));
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
      chanceDetected(covariance[p * cells + p] ?? Number.NaN, priorVariance(z)),
    );
  });
  return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
}

function priorVariance(z: number): number {
  const square = (index: number) => (PRIOR_MEDIAN_SDS[index] ?? Number.NaN) ** 2;
  return square(SD_INDEX.offset) + square(SD_INDEX.step) * z * z + square(SD_INDEX.cell);
}

/** Probability that the shrunken estimate of a cell with this error exceeds one tolerance. */
function chanceDetected(variance: number, prior: number): number {
  const shrinkage = Math.max(1e-12, 1 - variance / prior);
  return normalChance((ERROR_TO_DETECT * shrinkage - 1) / Math.sqrt(variance * shrinkage));
}
