import { at, cholesky, indexAt, logDeterminant, solveLower } from "../linear-algebra";
import { blockPrecision, timesPrecision, type BlockAtSds } from "./block-precision";
import type { GroupPosterior } from "./surface-posterior";

/** A block among all readings of all blocks, whose covariance is Σ; n is the number of its own readings. */
export interface BlockInAll {
  /** Its part of Σ⁻¹, reading i and j at `i * n + j`. */
  readonly precision: Float64Array;
  /** Its part of Σ⁻¹y. */
  readonly right: Float64Array;
  /** How far the group's cell c moves with what the others did not expect of reading i, at `c * n + i`. */
  readonly gains: Float64Array;
}

/**
 * How a block's readings hang together with all others. From it follows what the others say of any of its readings or effects:
 * leaving reading i out, it is predicted with variance 1 / Pᵢᵢ and missed by rᵢ / Pᵢᵢ, P the precision and r the right.
 *
 * Σ⁻¹ = V⁻¹ − V⁻¹CV⁻¹ within the block, V its own covariance and C that of its cells given all readings; the gains are CV⁻¹.
 * Cost: cells × readings × effects.
 *
 * @param posterior of the block's group at the same standard deviations, with covariances.
 * @see Rasmussen & Williams, Gaussian Processes for Machine Learning (2006), 5.4.2, for leaving one out.
 */
export function blockInAll({ posterior, ...task }: BlockAtSds & { readonly posterior: GroupPosterior }): BlockInAll {
  const { block } = task;
  const own = blockPrecision(task);
  const left = block.values.map((value, row) => value - at(posterior.mean, indexAt(block.cells, row)));
  const right = new Float64Array(left.length);
  timesPrecision(own, left, right);
  const gains = cellGains(task, posterior);
  return { right, gains, precision: precisionInAll(task, gains) };
}

function cellGains({ block, buffers }: BlockAtSds, { mean, covariance }: GroupPosterior): Float64Array {
  const count = block.values.length;
  const cells = mean.length;
  const { own, shared } = buffers;
  const gains = new Float64Array(cells * count);
  const ends = block.effects.length * count;
  for (let cell = 0; cell < cells; cell += 1) {
    const row = cell * cells;
    const start = cell * count;
    for (let j = 0; j < count; j += 1) gains[start + j] = at(covariance, row + indexAt(block.cells, j)) * at(own, j);
    for (let offset = 0; offset < ends; offset += count) {
      let along = 0;
      for (let j = 0; j < count; j += 1)
        along += at(covariance, row + indexAt(block.cells, j)) * at(shared, offset + j);
      for (let j = 0; j < count; j += 1) gains[start + j] = at(gains, start + j) - along * at(shared, offset + j);
    }
  }
  return gains;
}

/** (D − UᵀU)(I − M), M the gains of the readings' own cells. */
function precisionInAll({ block, buffers }: BlockAtSds, gains: Float64Array): Float64Array {
  const count = block.values.length;
  const { own, shared } = buffers;
  const precision = new Float64Array(count * count);
  for (let i = 0; i < count; i += 1) {
    const start = indexAt(block.cells, i) * count;
    for (let j = 0; j < count; j += 1)
      precision[i * count + j] = at(own, i) * ((i === j ? 1 : 0) - at(gains, start + j));
  }
  const along = new Float64Array(count);
  for (let offset = 0; offset < block.effects.length * count; offset += count) {
    for (let j = 0; j < count; j += 1) along[j] = -at(shared, offset + j);
    for (let i = 0; i < count; i += 1) {
      const weight = at(shared, offset + i);
      const start = indexAt(block.cells, i) * count;
      for (let j = 0; j < count; j += 1) along[j] = at(along, j) + weight * at(gains, start + j);
    }
    for (let i = 0; i < count; i += 1) {
      const weight = at(shared, offset + i);
      for (let j = 0; j < count; j += 1)
        precision[i * count + j] = at(precision, i * count + j) + weight * at(along, j);
    }
  }
  return precision;
}

/** A group's cells given all readings but some, at the same standard deviations. */
export interface CellsWithout {
  readonly mean: Float64Array;
  readonly variances: Float64Array;
  /** Log density of the readings that were left out, given all others. */
  readonly logDensity: number;
}

/** @returns the cells without the block; null where its readings are not linearly independent in double precision. */
export function withoutBlock({ precision, right, gains }: BlockInAll, posterior: GroupPosterior): CellsWithout | null {
  const count = right.length;
  const factor = cholesky({ rows: count, columns: count, values: precision });
  if (factor === null) return null;
  const missed = right.slice();
  solveLower(factor, missed);
  const logDensity = (logDeterminant(factor) - count * Math.log(2 * Math.PI) - sumOfProducts(missed, missed)) / 2;
  const mean = posterior.mean.slice();
  const variances = variancesOf(posterior);
  for (let cell = 0; cell < mean.length; cell += 1) {
    const gain = gains.slice(cell * count, (cell + 1) * count);
    solveLower(factor, gain);
    mean[cell] = at(mean, cell) - sumOfProducts(gain, missed);
    variances[cell] = at(variances, cell) + sumOfProducts(gain, gain);
  }
  return { mean, variances, logDensity };
}

/** The cells without one of the block's readings. */
export function withoutReading(
  { precision, right, gains }: BlockInAll,
  posterior: GroupPosterior,
  row: number,
): CellsWithout {
  const count = right.length;
  const own = at(precision, row * count + row);
  const missed = at(right, row) / own;
  const mean = posterior.mean.map((value, cell) => value - at(gains, cell * count + row) * missed);
  const variances = variancesOf(posterior).map((value, cell) => value + at(gains, cell * count + row) ** 2 / own);
  return { mean, variances, logDensity: (Math.log(own / (2 * Math.PI)) - missed * missed * own) / 2 };
}

function variancesOf({ mean, covariance }: GroupPosterior): Float64Array {
  return mean.map((_, cell) => at(covariance, cell * mean.length + cell));
}

function sumOfProducts(left: Float64Array, right: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < left.length; i += 1) sum += at(left, i) * at(right, i);
  return sum;
}
