import { ownValue, statedGauge, type Gauge, type PatternDocument, type Tester } from "../pattern";
import {
  chooseSwatch,
  indexPattern,
  patternWorking,
  workedAtOwnGauge,
  workedStitches,
  type PatternIndex,
  type Working,
} from "../prediction";

const CM_PER_M = 100;
const GRAMS = 100;

/** Yarn use of a garment in one fabric: stitches, and the sum of their sizes √(width × height), m. */
export interface FabricUse {
  readonly fabric: string;
  readonly stitches: number;
  readonly sizeM: number;
}

/** One tester's use of one yarn. */
export interface YarnUse {
  readonly tester: string;
  readonly size: string;
  readonly yarn: string;
  readonly metres: number;
  readonly fabrics: readonly FabricUse[];
  /** Share of the stitch sizes in fabrics without a swatch, whose gauge is taken to be the stated one. */
  readonly unknownShare: number;
}

/** Width × height of a stitch as a length, √(cm²) in m. */
export function stitchSizeM({ stitchesPerCm, rowsPerCm }: Gauge): number {
  return Math.sqrt(1 / (stitchesPerCm * rowsPerCm)) / CM_PER_M;
}

/** Stitches worked with a yarn, by fabric. */
function fabricUses(index: PatternIndex, yarn: string, working: Working): FabricUse[] {
  const { used } = workedStitches(index, working);
  return index.pattern.fabrics.flatMap(({ id }) => {
    const stitches = used.reduce((sum, use) => (use.fabric === id && use.yarn === yarn ? sum + use.stitches : sum), 0);
    return stitches === 0 ? [] : [{ fabric: id, stitches, sizeM: stitches * stitchSizeM(working.gaugeOf(id)) }];
  });
}

/** A size's use of a yarn as the pattern has it. */
export function patternUse(pattern: PatternDocument, yarn: string, size: string): FabricUse[] {
  const index = indexPattern(pattern);
  return fabricUses(index, yarn, patternWorking(index, size));
}

/**
 * A tester's use of each yarn, by the label of the yarn they used; entries that are set aside do not count.
 *
 * @returns one use per yarn that the pattern's pieces need, with the metres of all its entries.
 */
export function yarnUses(index: PatternIndex, tester: Tester): YarnUse[] {
  const metresByYarn: Record<string, number> = {};
  for (const { yarn, grams, metresPer100g, decision } of tester.yarn) {
    if (decision === "set-aside") continue;
    metresByYarn[yarn] = (ownValue(metresByYarn, yarn) ?? 0) + (grams * metresPer100g) / GRAMS;
  }
  const working = workedAtOwnGauge(index, tester);
  return Object.entries(metresByYarn).flatMap(([yarn, metres]) => {
    const fabrics = fabricUses(index, yarn, working);
    if (fabrics.length === 0) return [];
    const unknown = fabrics.filter(({ fabric }) => chooseSwatch(tester.swatches, fabric) === undefined);
    const unknownShare = totalSizeM(unknown) / totalSizeM(fabrics);
    return [{ tester: tester.id, size: tester.size, yarn, metres, fabrics, unknownShare }];
  });
}

/**
 * How much larger a tester's stitches are than the stated ones, over all fabrics worked with a yarn.
 *
 * @returns log of the ratio; null where the yarn is not used, or a swatch of one of its fabrics is missing.
 */
export function stitchSizeDeviation(index: PatternIndex, tester: Tester, yarn: string): number | null {
  const own = fabricUses(index, yarn, workedAtOwnGauge(index, tester));
  if (own.length === 0 || own.some(({ fabric }) => chooseSwatch(tester.swatches, fabric) === undefined)) return null;
  const gauges = new Map(index.pattern.fabrics.map((fabric) => [fabric.id, statedGauge(fabric)]));
  const stated = own.reduce((sum, { fabric, stitches }) => {
    const gauge = gauges.get(fabric);
    return gauge === undefined ? sum : sum + stitches * stitchSizeM(gauge);
  }, 0);
  return Math.log(totalSizeM(own) / stated);
}

/** Stitch sizes of a use in all fabrics together, m. */
export function totalSizeM(fabrics: readonly FabricUse[]): number {
  return fabrics.reduce((sum, { sizeM }) => sum + sizeM, 0);
}
