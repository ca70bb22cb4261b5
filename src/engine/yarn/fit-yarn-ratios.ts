import { at, leastSquares } from "../linear-algebra";
import { totalSizeM, type FabricUse, type YarnUse } from "./yarn-use";

/** Prior relative sd of makers' metres, and its weight as a number of testers (common practice, no source). */
const PRIOR_SPREAD = 0.06;
const PRIOR_WEIGHT = 3;
/** How far a fabric's own ratio lies from the yarn's, relative sd (common practice, no source). */
const FABRIC_SPREAD = 0.1;

/** Metres of yarn in a stitch ÷ the stitch's size, of the yarn and of each fabric worked in it. */
export interface YarnRatios {
  readonly ratio: number;
  readonly standardError: number;
  readonly byFabric: ReadonlyMap<string, number>;
  /** Relative sd of one maker's metres about the expected ones. */
  readonly spread: number;
  readonly degreesOfFreedom: number;
  /** Standard error of the expected metres of a use. */
  readonly standardErrorOf: (fabrics: readonly FabricUse[]) => number;
}

/**
 * One ratio a yarn by weighted regression through the origin, each fabric's ratio shrunk towards it.
 *
 * Errors are proportional to the metres, so the response is the metres per stitch size; the prior of a fabric's deviation is
 * one more row per fabric.
 *
 * @param uses at least one use of the yarn.
 * @see docs/method.md#yarn; Munden 1959 (from memory) for the ratio of plain knit, about 4.4 to 4.8.
 */
export function fitYarnRatios(uses: readonly YarnUse[]): YarnRatios {
  const fabrics = [...new Set(uses.flatMap((use) => use.fabrics.map(({ fabric }) => fabric)))].toSorted();
  const ratios = uses
    .map(({ metres, fabrics: used }) => metres / totalSizeM(used))
    .toSorted((left, right) => left - right);
  const common = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  const squares = ratios.reduce((sum, ratio) => sum + (ratio / common - 1) ** 2, 0);
  const degreesOfFreedom = PRIOR_WEIGHT + ratios.length - 1;
  const spread = Math.sqrt((PRIOR_WEIGHT * PRIOR_SPREAD ** 2 + squares) / degreesOfFreedom);
  const sorted = uses.toSorted((left, right) => (left.tester < right.tester ? -1 : 1));
  const scale = 1 / (common * spread);
  const rows = sorted.map((use) => [scale, ...fabrics.map((fabric) => scale * shareOf(use.fabrics, fabric))]);
  const values = sorted.map((use) => (scale * use.metres) / totalSizeM(use.fabrics));
  const priors = fabrics.map((_, which) => [
    0,
    ...fabrics.map((_fabric, at_) => (at_ === which ? 1 / (FABRIC_SPREAD * common) : 0)),
  ]);
  const fit = leastSquares([...rows, ...priors], [...values, ...fabrics.map(() => 0)]);
  if (fit === null) throw new RangeError("a use of yarn is not finite");
  const covariance = (i: number, j: number) => at(fit.unscaledCovariance, i * (fabrics.length + 1) + j);
  const ratio = at(fit.coefficients, 0);
  return {
    ratio,
    standardError: Math.sqrt(covariance(0, 0)),
    byFabric: new Map(fabrics.map((fabric, which) => [fabric, ratio + at(fit.coefficients, which + 1)])),
    spread,
    degreesOfFreedom,
    standardErrorOf: (used) => {
      const weights = [totalSizeM(used), ...fabrics.map((fabric) => shareOf(used, fabric) * totalSizeM(used))];
      let variance = 0;
      weights.forEach((left, i) => weights.forEach((right, j) => (variance += left * right * covariance(i, j))));
      return Math.sqrt(variance);
    },
  };
}

function shareOf(fabrics: readonly FabricUse[], fabric: string): number {
  return (fabrics.find((use) => use.fabric === fabric)?.sizeM ?? 0) / totalSizeM(fabrics);
}
