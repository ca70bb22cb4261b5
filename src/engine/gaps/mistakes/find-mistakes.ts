import { at } from "../../linear-algebra";
import {
  blockInAll,
  buffersFor,
  ownVariance,
  surfacePosterior,
  type BlockInAll,
  type GroupPosterior,
  type VarianceFit,
} from "../../variance-components";
import { SD_INDEX } from "../model/gap-sds";
import type { MistakeKind } from "./mistake-priors";
import type { BlockMistakes, Mistakes, TesterBlock, TesterReadings } from "./mistakes";
import { logNormal, twoErrors } from "./two-errors";
import { wholeTester } from "./whole-tester";

export type MistakeShares = Readonly<Record<MistakeKind, number>>;

export interface FoundMistakes {
  readonly mistakes: Mistakes;
  /** Log likelihood of the model with mistakes less that of the fit with the variances that stand for them. */
  readonly logCorrection: number;
}

interface Search {
  /** The readings as they are, and as the fit saw them. */
  readonly honest: TesterReadings;
  readonly seen: TesterReadings;
  readonly shares: MistakeShares;
  readonly sds: Float64Array;
  readonly buffers: ReturnType<typeof buffersFor>;
}

/**
 * How likely each reading, swatch and tester is a mistake, each judged by what all others say of it.
 *
 * @param seen the readings with the variances of the fit.
 * @param shares chance of a mistake of each kind, before it was seen.
 * @see docs/method.md#mistakes.
 */
export function findMistakes(given: {
  readonly honest: TesterReadings;
  readonly seen: TesterReadings;
  readonly fit: VarianceFit;
  readonly shares: MistakeShares;
}): FoundMistakes {
  const { honest, seen, fit, shares } = given;
  const { groups } = surfacePosterior(fit.solution);
  const buffers = buffersFor(honest.groups.flatMap(({ blocks }) => blocks));
  const search = { honest, seen, shares, sds: fit.sds, buffers };
  let logCorrection = 0;
  const mistakes = honest.groups.map(({ blocks }, g) =>
    blocks.flatMap((block, b) => {
      const seenBlock = seen.groups[g]?.blocks[b];
      const posterior = groups[g];
      if (seenBlock === undefined || posterior === undefined) return [];
      const found = blockMistakes(search, { block, seen: seenBlock, posterior });
      logCorrection += found.logCorrection;
      return [found];
    }),
  );
  return { mistakes, logCorrection };
}

interface OneBlock {
  readonly block: TesterBlock;
  readonly seen: TesterBlock;
  readonly posterior: GroupPosterior;
}

function blockMistakes(search: Search, one: OneBlock): BlockMistakes {
  const inAll = blockInAll({
    block: one.seen,
    residualSd: SD_INDEX.residual,
    sds: search.sds,
    buffers: search.buffers,
    posterior: one.posterior,
  });
  const readings = readingMistakes(search, one, inAll);
  const swatches = swatchMistakes(search, one, inAll);
  const honest = {
    readings: readings.chances,
    swatches: swatches.chances,
    tester: 0,
    readingVariances: readings.variances,
    effectVariances: swatches.variances,
    logDensities: readings.logDensities,
    logCorrection: readings.logCorrection + swatches.logCorrection,
  };
  const residualVariance = at(search.sds, SD_INDEX.residual) ** 2;
  return wholeTester({ ...one, inAll, honest, residualVariance, share: search.shares.tester });
}

function readingMistakes({ sds, shares }: Search, { block, seen }: OneBlock, { precision, right }: BlockInAll) {
  const count = block.values.length;
  const residual = at(sds, SD_INDEX.residual) ** 2;
  const chances = new Float64Array(count);
  const variances = new Float64Array(count);
  const logDensities = new Float64Array(count);
  let logCorrection = 0;
  for (let row = 0; row < count; row += 1) {
    const honestVariance = ownVariance(block, row, residual);
    const seenVariance = ownVariance(seen, row, residual);
    const inAll = at(precision, row * count + row);
    const missed = at(right, row) / inAll;
    const predictedVariance = Math.max(0, 1 / inAll - seenVariance);
    const more = at(block.wrongReadingVariances, row);
    const { chance, variance, logDensity } = twoErrors({
      ...{ missed, predictedVariance, honestVariance },
      wrongVariance: honestVariance + more,
      prior: more === 0 ? 0 : shares.reading,
    });
    chances[row] = chance;
    variances[row] = variance - honestVariance;
    logDensities[row] = logDensity;
    logCorrection += correction(logDensity, logNormal(missed, predictedVariance + seenVariance));
  }
  return { chances, variances, logDensities, logCorrection };
}

/** As for a reading: the readings measure the effect, and the swatch's variance is its prior. */
function swatchMistakes({ sds, shares }: Search, { block, seen }: OneBlock, { precision, right }: BlockInAll) {
  const chances = new Float64Array(block.effects.length);
  const variances = new Float64Array(block.effects.length);
  let logCorrection = 0;
  block.effects.forEach(({ weights, knownVariance, sd }, which) => {
    const more = at(block.wrongSwatchVariances, which);
    if (more === 0) return;
    const drift = sd === null ? 0 : at(sds, sd) ** 2;
    const honestVariance = knownVariance + drift;
    const seenVariance = (seen.effects[which]?.knownVariance ?? 0) + drift;
    const information = square(precision, weights);
    if (!(information > 0)) return;
    const missed = along(right, weights) / information;
    const predictedVariance = Math.max(0, 1 / information - seenVariance);
    const found = twoErrors({
      missed,
      predictedVariance,
      honestVariance,
      wrongVariance: honestVariance + more,
      prior: shares.swatch,
    });
    chances[which] = found.chance;
    variances[which] = found.variance - honestVariance;
    logCorrection += correction(found.logDensity, logNormal(missed, predictedVariance + seenVariance));
  });
  return { chances, variances, logCorrection };
}

function correction(withMistakes: number, asSeen: number): number {
  const more = withMistakes - asSeen;
  return Number.isFinite(more) ? more : 0;
}

function along(vector: Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let row = 0; row < weights.length; row += 1) sum += at(vector, row) * at(weights, row);
  return sum;
}

function square(matrix: Float64Array, weights: Float64Array): number {
  const count = weights.length;
  let sum = 0;
  for (let i = 0; i < count; i += 1) {
    const weight = at(weights, i);
    if (weight === 0) continue;
    for (let j = 0; j < count; j += 1) sum += weight * at(matrix, i * count + j) * at(weights, j);
  }
  return sum;
}
