import { at, factorise, logDeterminant, solveLower } from "../linear-algebra";
import type { Block } from "./variance-model";

/** Working arrays for one block, reused for every block: allocating them would cost more than the sums. */
export interface BlockBuffers {
  readonly own: Float64Array;
  readonly shared: Float64Array;
  readonly inner: Float64Array;
  readonly right: Float64Array;
  readonly moved: Float64Array;
  readonly half: Float64Array;
  readonly weighted: Float64Array;
  readonly pairs: Float64Array;
}

/** V⁻¹ = D − UᵀU of a block: the readings' own precisions D, and U with one row per effect, reading i of effect k at `k * count + i`. */
export interface BlockPrecision {
  readonly count: number;
  readonly effects: number;
  readonly own: Float64Array;
  readonly shared: Float64Array;
  readonly logDeterminant: number;
}

/** @returns working arrays that are large enough for any of the blocks. */
export function buffersFor(blocks: readonly Block[]): BlockBuffers {
  const count = blocks.reduce((max, { values }) => Math.max(max, values.length), 0);
  const effects = blocks.reduce((max, block) => Math.max(max, block.effects.length), 0);
  return {
    own: new Float64Array(count),
    shared: new Float64Array(effects * count),
    inner: new Float64Array(effects * effects),
    right: new Float64Array(count),
    moved: new Float64Array(count),
    half: new Float64Array(effects * count),
    weighted: new Float64Array(count),
    pairs: new Float64Array(count * count),
  };
}

/** A block at the standard deviations, by index. */
export interface BlockAtSds {
  readonly block: Block;
  readonly residualSd: number | null;
  readonly sds: Float64Array;
  readonly buffers: BlockBuffers;
}

/** Variance of a reading's own error, known and residual. */
export function ownVariance(
  { knownVariances, residualShares }: Pick<Block, "knownVariances" | "residualShares">,
  row: number,
  residualVariance: number,
): number {
  return at(knownVariances, row) + residualVariance * at(residualShares, row);
}

/** @throws {RangeError} if a number of the block is not finite. */
export function blockPrecision({ block, residualSd, sds, buffers }: BlockAtSds): BlockPrecision {
  const count = block.values.length;
  const effects = block.effects.length;
  const { own, shared, inner } = buffers;
  const residual = residualSd === null ? 0 : at(sds, residualSd) ** 2;
  for (let i = 0; i < count; i += 1) own[i] = 1 / ownVariance(block, i, residual);
  let offset = 0;
  for (const { weights, knownVariance, sd } of block.effects) {
    const scale = Math.sqrt(knownVariance + (sd === null ? 0 : at(sds, sd) ** 2));
    for (let i = 0; i < count; i += 1) shared[offset + i] = scale * at(weights, i);
    offset += count;
  }
  fillInner(buffers, { count, effects });
  if (!factorise(inner, effects)) throw new RangeError("a block holds a value that is not finite");
  const factor = { rows: effects, columns: effects, values: inner };
  let logOwn = 0;
  for (let i = 0; i < count; i += 1) logOwn -= Math.log(at(own, i));
  for (let effect = 0; effect < effects; effect += 1) {
    for (let i = 0; i < count; i += 1) shared[effect * count + i] = at(shared, effect * count + i) * at(own, i);
  }
  solveLower(factor, shared, count);
  return { count, effects, own, shared, logDeterminant: logOwn + logDeterminant(factor) };
}

/** The lower triangle of I + W·D·Wᵀ, W the scaled effects; never singular. */
function fillInner({ own, shared, inner }: BlockBuffers, { count, effects }: { count: number; effects: number }): void {
  for (let row = 0; row < effects; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = row === column ? 1 : 0;
      for (let i = 0; i < count; i += 1)
        sum += at(shared, row * count + i) * at(own, i) * at(shared, column * count + i);
      inner[row * effects + column] = sum;
    }
  }
}

/** Writes V⁻¹·vector into `result`. */
export function timesPrecision(
  { count, effects, own, shared }: BlockPrecision,
  vector: Float64Array,
  result: Float64Array,
): void {
  for (let i = 0; i < count; i += 1) result[i] = at(own, i) * at(vector, i);
  for (let offset = 0; offset < effects * count; offset += count) {
    let along = 0;
    for (let i = 0; i < count; i += 1) along += at(shared, offset + i) * at(vector, i);
    for (let i = 0; i < count; i += 1) result[i] = at(result, i) - along * at(shared, offset + i);
  }
}

/** V⁻¹·values of a block, V the covariance of its readings from the block's own effects and errors. */
export function blockResidual(given: {
  readonly block: Block;
  readonly residualSd: number | null;
  readonly sds: Float64Array;
  readonly values: Float64Array;
}): Float64Array {
  const residual = new Float64Array(given.values.length);
  timesPrecision(blockPrecision({ ...given, buffers: buffersFor([given.block]) }), given.values, residual);
  return residual;
}
