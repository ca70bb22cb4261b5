import { at } from "../../linear-algebra";
import type { PatternDocument } from "../../pattern";
import { mixtureVerdict } from "../cell-findings";
import type { Carrier, Cell } from "../gaps-output";
import type { AveragedModel } from "../model/cell-mixtures";
import { weightsOf, type MixturePart } from "../model/mixture";
import { isBeyond } from "../verdict";
import { blockInFit, leaveOut, openFit, type BlockInFit } from "./block-in-fit";
import type { TesterPlace } from "../model/tester-places";
import { carrierOf } from "./carrier";

/**
 * On whom each verdict beyond tolerance rests: those of the cell's own size without whom it would no longer be beyond.
 *
 * The standard deviations stay as they are; the models' weights follow from what is left.
 *
 * @param cells through sizes, in each through measurements, with their verdicts.
 * @returns for each cell the testers, none where no single one carries it.
 * @see docs/method.md#on-whom-it-rests.
 */
export function cellCarriers(given: {
  readonly pattern: PatternDocument;
  readonly models: readonly AveragedModel[];
  readonly places: readonly TesterPlace[];
  readonly cells: readonly Pick<Cell, "verdict">[];
}): readonly (readonly Carrier[])[] {
  const { pattern, places, cells } = given;
  const count = pattern.measurements.length;
  const beyond = cells.map(({ verdict }) => isBeyond(verdict));
  const carriers: Carrier[][] = cells.map(() => []);
  if (!beyond.includes(true)) return carriers;
  const models = given.models.map(({ fit, groups, weight }) => ({ opened: openFit(fit, groups), weight }));
  for (const place of places) {
    const flagged = pattern.measurements.flatMap((_, p) => (beyond[place.size * count + p] === true ? [p] : []));
    if (flagged.length === 0) continue;
    const blocks = models.flatMap(({ opened, weight }) => {
      const block = blockInFit(opened, place.size, place.block);
      return block === null ? [] : [{ block, weight }];
    });
    const mixturesWithout = memo((row: number | null) => mixturesOf(blocks, row));
    for (const p of flagged) {
      const stands = (row: number | null) => isBeyond(verdictIn(mixturesWithout(row), p));
      carriers[place.size * count + p]?.push(...carrierOf(pattern, place, stands));
    }
  }
  return carriers;
}

interface WeightedWithout {
  readonly weight: number;
  readonly mean: Float64Array;
  readonly variances: Float64Array;
}

function mixturesOf(blocks: readonly { block: BlockInFit; weight: number }[], row: number | null): WeightedWithout[] {
  const without = blocks.flatMap(({ block, weight }) => {
    const left = leaveOut(block, row);
    return left === null ? [] : [{ ...left, logWeight: Math.log(weight) - left.logDensity }];
  });
  const weights = weightsOf(without.map(({ logWeight }) => logWeight));
  return without.map(({ mean, variances }, model) => ({ weight: weights[model] ?? 0, mean, variances }));
}

function verdictIn(mixtures: readonly WeightedWithout[], cell: number) {
  const parts = mixtures.map(({ weight, mean, variances }): MixturePart => ({
    weight,
    mean: at(mean, cell),
    sd: Math.sqrt(Math.max(0, at(variances, cell))),
  }));
  return mixtureVerdict(parts);
}

function memo<Value>(compute: (row: number | null) => Value): (row: number | null) => Value {
  const known = new Map<number | null, Value>();
  return (row) => {
    const found = known.get(row);
    if (found !== undefined) return found;
    const value = compute(row);
    known.set(row, value);
    return value;
  };
}
