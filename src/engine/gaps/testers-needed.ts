import { normalChance } from "../distributions";
import { sizeScale, type PatternDocument } from "../pattern";
import { solveSurface, surfacePosterior } from "../variance-components";
import { GAP_SD } from "./model/gap-sds";
import { gapSurface } from "./model/gap-surface";
import { testerInformation } from "./model/tester-on-gauge";

/** The error to be found, in tolerances, and how surely (docs/method.md#how-many-testers). */
const ERROR = 1.5;
const FOUND = 0.8;
const MOST_TESTERS = 30;
/** What the model expects before any reading: medians of the priors on the six sds (0.674 of a half-normal's scale). */
const USUAL_SDS = Float64Array.of(0.54, 0.34, 0.27, 0.022, 0.022, 0.5);

/**
 * Before a call: how many testers of each size find an error of 1½ tolerances four times in five.
 *
 * Found is told as off or as leaning: the estimate lies beyond one tolerance. The chance is the mean over all cells, for
 * testers on gauge who measure everything.
 *
 * @returns testers a size; null where thirty would not do.
 * @see docs/method.md#how-many-testers.
 */
export function testersNeeded(pattern: PatternDocument): number | null {
  if (pattern.measurements.length === 0) return null;
  const perTester = pattern.sizes.map((size) => testerInformation(pattern, size, USUAL_SDS));
  for (let testers = 1; testers <= MOST_TESTERS; testers += 1) {
    if (chanceToFind(pattern, { perTester, testers }) >= FOUND) return testers;
  }
  return null;
}

function chanceToFind(
  pattern: PatternDocument,
  { perTester, testers }: { perTester: readonly Float64Array[]; testers: number },
): number {
  const cells = pattern.measurements.length;
  const none = Array.from(USUAL_SDS, () => undefined);
  const groups = perTester.map((precision) => ({
    cells,
    precision: precision.map((value) => testers * value),
    right: new Float64Array(cells),
    precisionSlopes: none,
    rightSlopes: none,
  }));
  const zeros = new Float64Array(USUAL_SDS.length);
  const information = { groups, readings: 0, constant: 0, traceSlopes: zeros, squareSlopes: zeros };
  const solution = solveSurface(gapSurface(pattern, []), information, USUAL_SDS);
  if (solution === null) return 0;
  const scale = sizeScale(pattern);
  const chances = surfacePosterior(solution).groups.flatMap(({ covariance }, s) => {
    const z = scale.get(pattern.sizes[s]?.id ?? "") ?? 0;
    return pattern.measurements.map((_, p) => chanceBeyond(covariance[p * cells + p] ?? Number.NaN, priorVariance(z)));
  });
  return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
}

function priorVariance(z: number): number {
  const square = (index: number) => (USUAL_SDS[index] ?? Number.NaN) ** 2;
  return square(GAP_SD.offset) + square(GAP_SD.step) * z * z + square(GAP_SD.cell);
}

/** Chance that the estimate of a cell of this error, drawn toward 0 as it is, lies beyond one tolerance. */
function chanceBeyond(variance: number, prior: number): number {
  const kept = Math.max(1e-12, 1 - variance / prior);
  return normalChance((ERROR * kept - 1) / Math.sqrt(variance * kept));
}
