import { at, leastSquares } from "../linear-algebra";
import { totalSizeM, type FabricUse, type YarnUse } from "./yarn-use";

/** Prior relative sd of makers' metres, and its weight as a number of testers (common practice, no source). */
const PRIOR_SPREAD = 0.05;
const PRIOR_WEIGHT = 3;
/** Rounds after which the spread does not change in what is shown. */
const ROUNDS = 8;
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
 * one more row per fabric. A tester without a swatch weighs less, for their own gauge is in their metres.
 *
 * @param uses at least one use of the yarn.
 * @param gaugeSpread relative sd of the stitch size of a maker whose gauge is not known.
 * @see docs/method.md#yarn; Munden 1959 (from memory) for the ratio of plain knit, about 4.4 to 4.8.
 */
export function fitYarnRatios(uses: readonly YarnUse[], gaugeSpread: number): YarnRatios {
  const fabrics = [...new Set(uses.flatMap((use) => use.fabrics.map(({ fabric }) => fabric)))].toSorted();
  const sorted = uses
    .toSorted((left, right) => (left.tester < right.tester ? -1 : 1))
    .map((use) => ({ ...use, ratio: use.metres / totalSizeM(use.fabrics) }));
  const { common, spread, degreesOfFreedom, weights } = spreadOfRatios(sorted, gaugeSpread);
  const scaleOf = (weight: number) => Math.sqrt(weight) / (common * spread);
  const rows = sorted.map((use, which) => {
    const scale = scaleOf(weights[which] ?? 0);
    return [scale, ...fabrics.map((fabric) => scale * shareOf(use.fabrics, fabric))];
  });
  const values = sorted.map(({ ratio }, which) => scaleOf(weights[which] ?? 0) * ratio);
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

/**
 * The mean ratio and one maker's relative sd about it. A tester with all swatches weighs 1, one without them the share of
 * their variance that is not their unknown gauge's; as that share rests on the sd, it is estimated again.
 */
function spreadOfRatios(
  uses: readonly { readonly ratio: number; readonly unknownShare: number }[],
  gaugeSpread: number,
) {
  let found = { common: Number.NaN, spread: PRIOR_SPREAD, degreesOfFreedom: PRIOR_WEIGHT, weights: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    const variance = found.spread ** 2;
    const weights = uses.map(({ unknownShare }) => variance / (variance + (unknownShare * gaugeSpread) ** 2));
    const common = sum(uses.map(({ ratio }, which) => (weights[which] ?? 0) * ratio)) / sum(weights);
    const squares = sum(uses.map(({ ratio }, which) => (weights[which] ?? 0) * (ratio / common - 1) ** 2));
    const degreesOfFreedom = PRIOR_WEIGHT + Math.max(0, sum(weights) - 1);
    const spread = Math.sqrt((PRIOR_WEIGHT * PRIOR_SPREAD ** 2 + squares) / degreesOfFreedom);
    found = { common, spread, degreesOfFreedom, weights };
  }
  return found;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function shareOf(fabrics: readonly FabricUse[], fabric: string): number {
  return (fabrics.find((use) => use.fabric === fabric)?.sizeM ?? 0) / totalSizeM(fabrics);
}
