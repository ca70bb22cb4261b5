import { studentTQuantile } from "../distributions";
import { statedGauge, type CallDocument, type PatternDocument } from "../pattern";
import { indexPattern } from "../prediction";
import { fitYarnRatios, type YarnRatios } from "./fit-yarn-ratios";
import { makersGauge, type MakersGauge } from "./makers-gauge";
import { patternUse, stitchSizeDeviation, stitchSizeM, yarnUses, type FabricUse, type YarnUse } from "./yarn-use";

/** Share of makers who should have enough. */
const COVERAGE = 0.9;
const DEFAULT_ROUNDING_M = 10;

export interface YarnNeed {
  readonly yarn: string;
  readonly ratio: number | null;
  readonly standardError: number | null;
  readonly fabrics: readonly { readonly fabric: string; readonly ratio: number; readonly metresPerStitch: number }[];
  readonly sizes: readonly SizeNeed[];
}

interface SizeNeed {
  readonly size: string;
  readonly stitches: number;
  /** At the pattern's gauge. */
  readonly expectedMetres: number | null;
  /** Nine makers in ten need no more, each at their own gauge. */
  readonly upperMetres: number | null;
  readonly publishMetres: number | null;
  readonly balls: number | null;
  readonly reports: number;
}

/**
 * How much of each yarn people should buy, in every size, tested or not.
 *
 * @param call in which excluded entries are set aside.
 * @param roundToM metres to publish are rounded up to a multiple of this.
 * @returns yarns and sizes in the pattern's order; nulls if nobody reported the yarn or no piece uses it.
 * @see docs/method.md#yarn.
 */
export function yarnNeeds(call: CallDocument, roundToM = DEFAULT_ROUNDING_M): { readonly yarns: readonly YarnNeed[] } {
  const index = indexPattern(call.pattern);
  const uses = call.testers.flatMap((tester) => yarnUses(index, tester));
  return {
    yarns: call.pattern.yarns.map(({ id, metresPerBall }) => {
      const ofYarn = uses.filter(({ yarn }) => yarn === id);
      const gauge = makersGauge(call.testers.flatMap((tester) => stitchSizeDeviation(index, tester, id) ?? []));
      const ratios = ofYarn.length === 0 ? null : fitYarnRatios(ofYarn, gauge.spread);
      return {
        yarn: id,
        ratio: ratios?.ratio ?? null,
        standardError: ratios?.standardError ?? null,
        fabrics: ratios === null ? [] : fabricRatios(call.pattern, id, ratios),
        sizes: call.pattern.sizes.map(({ id: size }) =>
          sizeNeed({ size, used: patternUse(call.pattern, id, size), ratios, gauge, metresPerBall, roundToM, ofYarn }),
        ),
      };
    }),
  };
}

/** Amount to publish: enough for nine makers in ten, rounded up to a multiple of `roundToM`; null for null. */
export function publishedMetres(upperMetres: number | null, roundToM: number): number | null {
  return upperMetres === null ? null : Math.ceil(upperMetres / roundToM) * roundToM;
}

function fabricRatios(pattern: PatternDocument, yarn: string, ratios: YarnRatios): YarnNeed["fabrics"] {
  const worked = new Set(pattern.sizes.flatMap(({ id }) => patternUse(pattern, yarn, id).map(({ fabric }) => fabric)));
  return pattern.fabrics
    .filter(({ id }) => worked.has(id))
    .map((fabric) => {
      const ratio = ratios.byFabric.get(fabric.id) ?? ratios.ratio;
      return { fabric: fabric.id, ratio, metresPerStitch: ratio * stitchSizeM(statedGauge(fabric)) };
    });
}

function sizeNeed(given: {
  size: string;
  used: readonly FabricUse[];
  ratios: YarnRatios | null;
  gauge: MakersGauge;
  metresPerBall: number;
  roundToM: number;
  ofYarn: readonly YarnUse[];
}): SizeNeed {
  const { size, used, ratios, gauge, metresPerBall, roundToM, ofYarn } = given;
  const stitches = used.reduce((sum, use) => sum + use.stitches, 0);
  const reports = ofYarn.filter((use) => use.size === size).length;
  if (ratios === null || stitches === 0) {
    return { size, stitches, expectedMetres: null, upperMetres: null, publishMetres: null, balls: null, reports };
  }
  const expectedMetres = used.reduce(
    (sum, { fabric, sizeM }) => sum + (ratios.byFabric.get(fabric) ?? ratios.ratio) * sizeM,
    0,
  );
  const yarn = {
    sd: Math.hypot(ratios.spread, ratios.standardErrorOf(used) / expectedMetres),
    degreesOfFreedom: ratios.degreesOfFreedom,
  };
  const upperMetres = expectedMetres * Math.exp(gauge.shift + upperOfSum(yarn, { ...gauge, sd: gauge.spread }));
  return {
    size,
    stitches,
    expectedMetres,
    upperMetres,
    publishMetres: publishedMetres(upperMetres, roundToM),
    balls: Math.ceil(upperMetres / metresPerBall),
    reports,
  };
}

interface Spread {
  readonly sd: number;
  readonly degreesOfFreedom: number;
}

/**
 * Bound that the sum of two errors stays below with a chance of `COVERAGE`: Student's t with the degrees of freedom of
 * Welch and Satterthwaite.
 */
function upperOfSum(one: Spread, other: Spread): number {
  const variance = one.sd ** 2 + other.sd ** 2;
  const degreesOfFreedom =
    variance ** 2 / (one.sd ** 4 / one.degreesOfFreedom + other.sd ** 4 / other.degreesOfFreedom);
  return studentTQuantile(COVERAGE, degreesOfFreedom) * Math.sqrt(variance);
}
