import { at, cholesky, logDeterminant, solveLower, type Matrix } from "../../linear-algebra";
import {
  blockInAll,
  buffersFor,
  surfacePosterior,
  type BlockInAll,
  type GroupPosterior,
  type VarianceFit,
} from "../../variance-components";
import { SD_INDEX } from "../model/gap-sds";
import type { MistakeKind } from "./mistake-priors";
import type { BlockMistakes, Mistakes, TesterBlock, TesterReadings } from "./mistakes";
import { logNormal, twoErrors } from "./two-errors";

/** Mean square of a tester's standardised misses from which the whole tester is looked at; honest ones have 1. */
const SUSPICIOUS_SQUARE = 1.5;
const HONEST_TESTER = 1e-6;

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
  return wholeTester(search, { ...one, inAll, honest });
}

function readingMistakes({ sds, shares }: Search, { block, seen }: OneBlock, { precision, right }: BlockInAll) {
  const count = block.values.length;
  const residual = at(sds, SD_INDEX.residual) ** 2;
  const chances = new Float64Array(count);
  const variances = new Float64Array(count);
  const logDensities = new Float64Array(count);
  let logCorrection = 0;
  for (let row = 0; row < count; row += 1) {
    const honestVariance = at(block.knownVariances, row) + residual;
    const seenVariance = at(seen.knownVariances, row) + residual;
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

/** Whether not single readings but all of a tester's are wrong; looked at only where they miss what others say by more than usual. */
function wholeTester(
  { sds, shares }: Search,
  given: OneBlock & { inAll: BlockInAll; honest: BlockMistakes },
): BlockMistakes {
  const { block, seen, inAll, honest } = given;
  const sound = { ...honest, logCorrection: honest.logCorrection + Math.log1p(-shares.tester) };
  const residual = at(sds, SD_INDEX.residual) ** 2;
  const apart = leftOut(inAll);
  if (apart === null || !isSuspicious({ block, seen, inAll, residual })) return sound;
  const asSeen = logDensityOf(apart, () => 0);
  const wrongVariance = (row: number) => at(block.knownVariances, row) + residual + at(block.wrongTesterVariances, row);
  const wrong = logDensityOf(apart, (row) => wrongVariance(row) - at(seen.knownVariances, row) - residual);
  if (asSeen === null || wrong === null) return sound;
  const logHonest = asSeen + sound.logCorrection;
  const logWrong = Math.log(shares.tester) + wrong;
  const chance = 1 / (1 + Math.exp(logHonest - logWrong));
  if (chance < HONEST_TESTER) return sound;
  const readingVariances = honest.readingVariances.map((more, row) => {
    const honestVariance = at(block.knownVariances, row) + residual;
    return 1 / ((1 - chance) / (honestVariance + more) + chance / wrongVariance(row)) - honestVariance;
  });
  return {
    ...honest,
    readings: honest.readings.map((reading) => (1 - chance) * reading),
    swatches: honest.swatches.map((swatch) => (1 - chance) * swatch),
    tester: chance,
    readingVariances: readingVariances.map((more) => Math.max(0, more)),
    effectVariances: honest.effectVariances.map((more) => (1 - chance) * more),
    logCorrection: Math.max(logHonest, logWrong) + Math.log1p(Math.exp(-Math.abs(logHonest - logWrong))) - asSeen,
  };
}

/** Standardised by honest variances, or a tester who is held to be wrong would never be suspicious again. */
function isSuspicious(given: { block: TesterBlock; seen: TesterBlock; inAll: BlockInAll; residual: number }): boolean {
  const { block, seen, inAll, residual } = given;
  const count = block.values.length;
  let squares = 0;
  for (let row = 0; row < count; row += 1) {
    const inAllRow = at(inAll.precision, row * count + row);
    const missed = at(inAll.right, row) / inAllRow;
    const predicted = Math.max(0, 1 / inAllRow - at(seen.knownVariances, row) - residual);
    squares += missed ** 2 / (predicted + at(block.knownVariances, row) + residual);
  }
  return squares > SUSPICIOUS_SQUARE * count;
}

interface LeftOut {
  readonly covariance: Float64Array;
  readonly missed: Float64Array;
}

/** How far the other testers miss all of this one's readings, and the covariance of that. */
function leftOut({ precision, right }: BlockInAll): LeftOut | null {
  const count = right.length;
  const factor = cholesky({ rows: count, columns: count, values: precision });
  if (factor === null) return null;
  const inverse = new Float64Array(count * count);
  for (let row = 0; row < count; row += 1) inverse[row * count + row] = 1;
  solveLower(factor, inverse, count);
  const covariance = new Float64Array(count * count);
  for (let k = 0; k < count; k += 1) {
    for (let i = 0; i <= k; i += 1) {
      const left = at(inverse, k * count + i);
      for (let j = 0; j <= k; j += 1)
        covariance[i * count + j] = at(covariance, i * count + j) + left * at(inverse, k * count + j);
    }
  }
  const missed = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j < count; j += 1) missed[i] = at(missed, i) + at(covariance, i * count + j) * at(right, j);
  }
  return { covariance, missed };
}

function logDensityOf({ covariance, missed }: LeftOut, moreOf: (row: number) => number): number | null {
  const count = missed.length;
  const values = covariance.slice();
  for (let row = 0; row < count; row += 1) values[row * count + row] = at(values, row * count + row) + moreOf(row);
  const factor: Matrix | null = cholesky({ rows: count, columns: count, values });
  if (factor === null) return null;
  const scaled = missed.slice();
  solveLower(factor, scaled);
  const squares = scaled.reduce((sum, value) => sum + value * value, 0);
  return -(count * Math.log(2 * Math.PI) + logDeterminant(factor) + squares) / 2;
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
