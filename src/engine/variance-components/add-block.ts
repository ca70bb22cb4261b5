import { at, indexAt } from "../linear-algebra";
import { blockPrecision, timesPrecision, type BlockBuffers, type BlockPrecision } from "./block-precision";
import type { GroupInformation } from "./information";
import type { LowRank } from "./low-rank";
import type { Block } from "./variance-model";

interface Totals {
  constant: number;
  readings: number;
  readonly traceSlopes: Float64Array;
  readonly squareSlopes: Float64Array;
}

interface BlockTask {
  readonly block: Block;
  readonly residualSd: number | null;
  readonly sds: Float64Array;
  readonly information: GroupInformation;
  readonly totals: Totals;
  readonly buffers: BlockBuffers;
  readonly withSlopes: boolean;
  /** How many effects the blocks of the group before it have. */
  readonly firstEffect: number;
}

/** Adds the information of one block's readings about their cells, in lower triangles. Cost: readings² × effects. */
export function addBlock(task: BlockTask): void {
  const { block, information, totals, buffers } = task;
  const precision = blockPrecision(task);
  timesPrecision(precision, block.values, buffers.right);
  totals.readings += block.values.length;
  totals.constant += precision.logDeterminant + dot(block.values, buffers.right, block.values.length);
  addPrecision(task, precision);
  if (information.lowRank !== null) addLowRank(task, information.lowRank, precision);
  scatter(information.right, block.cells, buffers.right, 1);
  if (!task.withSlopes) return;
  for (const { sd, weights } of block.effects) if (sd !== null) addEffectSlopes(task, { sd, weights, precision });
  if (task.residualSd !== null) addResidualSlopes(task, { sd: task.residualSd, precision });
}

function addPrecision(
  { block, information, buffers }: BlockTask,
  { count, effects, own, shared }: BlockPrecision,
): void {
  const { pairs } = buffers;
  for (let i = 0; i < count; i += 1) {
    const row = i * count;
    pairs.fill(0, row, row + i);
    pairs[row + i] = at(own, i);
    for (let offset = 0; offset < effects * count; offset += count) {
      const weight = at(shared, offset + i);
      if (weight === 0) continue;
      for (let j = 0; j <= i; j += 1) pairs[row + j] = at(pairs, row + j) - weight * at(shared, offset + j);
    }
  }
  scatterPairs(information.precision, information.cells, { cells: block.cells, pairs });
}

function addLowRank(
  { block: { cells }, firstEffect }: BlockTask,
  lowRank: LowRank,
  { count, effects, own, shared }: BlockPrecision,
): void {
  scatter(lowRank.own, cells, own, 1);
  const size = lowRank.own.length;
  for (let effect = 0; effect < effects; effect += 1) {
    const row = (firstEffect + effect) * size;
    for (let i = 0; i < count; i += 1) {
      const index = row + indexAt(cells, i);
      lowRank.shared[index] = at(lowRank.shared, index) + at(shared, effect * count + i);
    }
  }
}

/**
 * Adds the values of pairs of readings at their cells, symmetrically for two different readings, in the lower triangle.
 */
function scatterPairs(
  into: Float64Array,
  size: number,
  { cells, pairs }: { cells: Int32Array; pairs: Float64Array },
): void {
  const count = cells.length;
  for (let i = 0; i < count; i += 1) {
    const row = indexAt(cells, i);
    for (let j = 0; j <= i; j += 1) {
      const column = indexAt(cells, j);
      const value = at(pairs, i * count + j);
      const index = column > row ? column * size + row : row * size + column;
      into[index] = at(into, index) + (column === row && j < i ? 2 * value : value);
    }
  }
}

function addEffectSlopes(
  { block, information, totals, buffers }: BlockTask,
  { sd, weights, precision }: { sd: number; weights: Float64Array; precision: BlockPrecision },
): void {
  const { moved } = buffers;
  const { count } = precision;
  timesPrecision(precision, weights, moved);
  const along = dot(moved, block.values, count);
  totals.traceSlopes[sd] = at(totals.traceSlopes, sd) + dot(weights, moved, count);
  totals.squareSlopes[sd] = at(totals.squareSlopes, sd) - along * along;
  scatter(information.rightSlopes[sd], block.cells, moved, -along);
  const slopes = information.precisionSlopes[sd];
  if (slopes === undefined) return;
  const { cells } = block;
  const size = information.cells;
  for (let i = 0; i < count; i += 1) {
    const row = indexAt(cells, i);
    const weight = at(moved, i);
    for (let j = 0; j <= i; j += 1) {
      const column = indexAt(cells, j);
      const index = column > row ? column * size + row : row * size + column;
      const value = weight * at(moved, j);
      slopes[index] = at(slopes, index) - (column === row && j < i ? 2 * value : value);
    }
  }
}

/**
 * Slopes by the residual's variance, of which reading i has the share Sᵢᵢ: V⁻¹SV⁻¹ = DSD − DS·UᵀU − UᵀU·SD + Uᵀ(USUᵀ)U, without
 * a full matrix product.
 */
function addResidualSlopes(
  { block, information, totals, buffers }: BlockTask,
  { sd, precision }: { sd: number; precision: BlockPrecision },
): void {
  const { count, effects, own, shared } = precision;
  const { residualShares } = block;
  const { weighted } = buffers;
  let trace = 0;
  let squares = 0;
  for (let i = 0; i < count; i += 1) {
    let diagonal = at(own, i);
    for (let offset = 0; offset < effects * count; offset += count) diagonal -= at(shared, offset + i) ** 2;
    trace += at(residualShares, i) * diagonal;
    squares += at(residualShares, i) * at(buffers.right, i) ** 2;
    weighted[i] = at(residualShares, i) * at(buffers.right, i);
  }
  totals.traceSlopes[sd] = at(totals.traceSlopes, sd) + trace;
  totals.squareSlopes[sd] = at(totals.squareSlopes, sd) - squares;
  timesPrecision(precision, weighted, buffers.moved);
  scatter(information.rightSlopes[sd], block.cells, buffers.moved, -1);
  const slopes = information.precisionSlopes[sd];
  if (slopes === undefined) return;
  fillMinusSquare(precision, residualShares, buffers);
  scatterPairs(slopes, information.cells, { cells: block.cells, pairs: buffers.pairs });
}

/** Writes the lower triangle of −V⁻¹SV⁻¹ into `pairs`. */
function fillMinusSquare(precision: BlockPrecision, shares: Float64Array, { half, pairs }: BlockBuffers): void {
  const { count, effects, own, shared } = precision;
  fillHalfSquare(precision, shares, half);
  for (let i = 0; i < count; i += 1) {
    const row = i * count;
    pairs.fill(0, row, row + i);
    pairs[row + i] = -at(shares, i) * at(own, i) ** 2;
    for (let offset = 0; offset < effects * count; offset += count) {
      const left = at(shared, offset + i);
      const right = at(half, offset + i);
      if (left === 0 && right === 0) continue;
      for (let j = 0; j <= i; j += 1)
        pairs[row + j] = at(pairs, row + j) - left * at(half, offset + j) - right * at(shared, offset + j);
    }
  }
}

/** ½(USUᵀ)U − U·SD, so that V⁻¹SV⁻¹ = DSD + Uᵀ·half + halfᵀ·U. */
function fillHalfSquare(
  { count, effects, own, shared }: BlockPrecision,
  shares: Float64Array,
  half: Float64Array,
): void {
  for (let row = 0; row < effects * count; row += count) {
    for (let i = 0; i < count; i += 1) half[row + i] = -at(shared, row + i) * at(shares, i) * at(own, i);
    for (let other = 0; other < effects * count; other += count) {
      let product = 0;
      for (let i = 0; i < count; i += 1) product += at(shared, row + i) * at(shares, i) * at(shared, other + i);
      for (let i = 0; i < count; i += 1) half[row + i] = at(half, row + i) + (product / 2) * at(shared, other + i);
    }
  }
}

function dot(left: Float64Array, right: Float64Array, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += at(left, i) * at(right, i);
  return sum;
}

/** Adds the readings' values, times a factor, at their cells. */
function scatter(into: Float64Array | undefined, cells: Int32Array, values: Float64Array, times: number): void {
  if (into === undefined) return;
  for (let i = 0; i < cells.length; i += 1)
    into[indexAt(cells, i)] = at(into, indexAt(cells, i)) + times * at(values, i);
}
