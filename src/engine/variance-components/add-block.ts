import { at, indexAt, cholesky, logDeterminant, solveLower, type Matrix } from "../linear-algebra";
import type { GroupInformation } from "./information";
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
}

/** V⁻¹ = D − UᵀU of a block: the readings' own precisions D, and U of one row an effect. */
interface BlockPrecision {
  readonly own: Float64Array;
  readonly shared: Matrix;
  readonly logDeterminant: number;
}

/** Adds what one block's readings say of their cells. Cost: readings² × effects. */
export function addBlock(task: BlockTask): void {
  const { block, sds, information, totals } = task;
  const precision = blockPrecision(task);
  const right = timesPrecision(precision, block.values);
  totals.readings += block.values.length;
  totals.constant += precision.logDeterminant + dot(block.values, right);
  addPrecision(task, precision);
  scatter(information.right, block.cells, right, 1);
  for (const { sd, weights } of block.effects) if (sd !== null) addEffectSlopes(task, { sd, weights, precision });
  if (task.residualSd !== null && sds.length > 0) addResidualSlopes(task, { sd: task.residualSd, precision, right });
}

function blockPrecision({ block, residualSd, sds }: Pick<BlockTask, "block" | "residualSd" | "sds">): BlockPrecision {
  const count = block.values.length;
  const residual = residualSd === null ? 0 : at(sds, residualSd) ** 2;
  const own = new Float64Array(count);
  for (let i = 0; i < count; i += 1) own[i] = 1 / (at(block.knownVariances, i) + residual);
  const scaled = new Float64Array(block.effects.length * count);
  block.effects.forEach(({ weights, knownVariance, sd }, effect) => {
    const scale = Math.sqrt(knownVariance + (sd === null ? 0 : at(sds, sd) ** 2));
    for (let i = 0; i < count; i += 1) scaled[effect * count + i] = scale * at(weights, i);
  });
  const factor = innerFactor(scaled, own, block.effects.length);
  let logOwn = 0;
  for (let i = 0; i < count; i += 1) logOwn -= Math.log(at(own, i));
  for (let k = 0; k < scaled.length; k += 1) scaled[k] = at(scaled, k) * at(own, k % count);
  solveLower(factor, scaled, count);
  return {
    own,
    shared: { rows: block.effects.length, columns: count, values: scaled },
    logDeterminant: logOwn + logDeterminant(factor),
  };
}

/** Factor of I + W·D·Wᵀ, W the scaled effects; never singular. */
function innerFactor(scaled: Float64Array, own: Float64Array, effects: number): Matrix {
  const count = own.length;
  const inner = new Float64Array(effects * effects);
  for (let row = 0; row < effects; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = row === column ? 1 : 0;
      for (let i = 0; i < count; i += 1)
        sum += at(scaled, row * count + i) * at(own, i) * at(scaled, column * count + i);
      inner[row * effects + column] = sum;
    }
  }
  const factor = cholesky({ rows: effects, columns: effects, values: inner });
  if (factor === null) throw new RangeError("a block holds a value that is not finite");
  return factor;
}

function timesPrecision({ own, shared }: BlockPrecision, vector: Float64Array): Float64Array {
  const count = vector.length;
  const result = new Float64Array(count);
  for (let i = 0; i < count; i += 1) result[i] = at(own, i) * at(vector, i);
  for (let effect = 0; effect < shared.rows; effect += 1) {
    let along = 0;
    for (let i = 0; i < count; i += 1) along += at(shared.values, effect * count + i) * at(vector, i);
    for (let i = 0; i < count; i += 1) result[i] = at(result, i) - along * at(shared.values, effect * count + i);
  }
  return result;
}

function addPrecision({ block, information }: BlockTask, { own, shared }: BlockPrecision): void {
  const count = block.values.length;
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let value = i === j ? at(own, i) : 0;
      for (let k = 0; k < shared.rows; k += 1)
        value -= at(shared.values, k * count + i) * at(shared.values, k * count + j);
      addSymmetric(information.precision, { block, cells: information.cells, i, j, value });
    }
  }
}

/** Adds a value at a pair of readings' cells, and once more the other way round for two different readings. */
function addSymmetric(
  into: Float64Array,
  { block, cells, i, j, value }: { block: Block; cells: number; i: number; j: number; value: number },
): void {
  const row = indexAt(block.cells, i);
  const column = indexAt(block.cells, j);
  into[row * cells + column] = at(into, row * cells + column) + value;
  if (i !== j) into[column * cells + row] = at(into, column * cells + row) + value;
}

function addEffectSlopes(
  { block, information, totals }: BlockTask,
  { sd, weights, precision }: { sd: number; weights: Float64Array; precision: BlockPrecision },
): void {
  const moved = timesPrecision(precision, weights);
  const along = dot(moved, block.values);
  totals.traceSlopes[sd] = at(totals.traceSlopes, sd) + dot(weights, moved);
  totals.squareSlopes[sd] = at(totals.squareSlopes, sd) - along * along;
  scatter(information.rightSlopes[sd], block.cells, moved, -along);
  const slopes = information.precisionSlopes[sd];
  if (slopes === undefined) return;
  for (let i = 0; i < moved.length; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      addSymmetric(slopes, { block, cells: information.cells, i, j, value: -at(moved, i) * at(moved, j) });
    }
  }
}

/** Slopes by the residual's variance: V⁻¹V⁻¹ = D² − D·UᵀU − UᵀU·D + Uᵀ(UUᵀ)U, never formed by a full product. */
function addResidualSlopes(
  { block, information, totals }: BlockTask,
  { sd, precision, right }: { sd: number; precision: BlockPrecision; right: Float64Array },
): void {
  const { own, shared } = precision;
  const count = right.length;
  const slopes = information.precisionSlopes[sd];
  let trace = 0;
  const half = halfSquare(precision);
  for (let i = 0; i < count; i += 1) {
    trace += at(own, i);
    for (let k = 0; k < shared.rows; k += 1) trace -= at(shared.values, k * count + i) ** 2;
    if (slopes === undefined) continue;
    for (let j = 0; j <= i; j += 1) {
      let value = i === j ? -(at(own, i) ** 2) : 0;
      for (let k = 0; k < shared.rows; k += 1) {
        value -= at(shared.values, k * count + i) * at(half, k * count + j);
        value -= at(half, k * count + i) * at(shared.values, k * count + j);
      }
      addSymmetric(slopes, { block, cells: information.cells, i, j, value });
    }
  }
  totals.traceSlopes[sd] = at(totals.traceSlopes, sd) + trace;
  totals.squareSlopes[sd] = at(totals.squareSlopes, sd) - dot(right, right);
  scatter(information.rightSlopes[sd], block.cells, timesPrecision(precision, right), -1);
}

/** ½(UUᵀ)U − U·D, so that V⁻¹V⁻¹ = D² + Uᵀ·half + halfᵀ·U. */
function halfSquare({ own, shared }: BlockPrecision): Float64Array {
  const { rows, columns, values } = shared;
  const half = new Float64Array(rows * columns);
  for (let row = 0; row < rows; row += 1) {
    for (let i = 0; i < columns; i += 1) half[row * columns + i] = -at(values, row * columns + i) * at(own, i);
    for (let other = 0; other < rows; other += 1) {
      let product = 0;
      for (let i = 0; i < columns; i += 1) product += at(values, row * columns + i) * at(values, other * columns + i);
      for (let i = 0; i < columns; i += 1) {
        half[row * columns + i] = at(half, row * columns + i) + (product / 2) * at(values, other * columns + i);
      }
    }
  }
  return half;
}

function dot(left: Float64Array, right: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < left.length; i += 1) sum += at(left, i) * at(right, i);
  return sum;
}

function scatter(into: Float64Array | undefined, cells: Int32Array, values: Float64Array, times: number): void {
  if (into === undefined) return;
  for (let i = 0; i < values.length; i += 1)
    into[indexAt(cells, i)] = at(into, indexAt(cells, i)) + times * at(values, i);
}

/** V⁻¹·values of a block, V the variance that its own effects and errors give its readings. */
export function blockResidual(given: {
  readonly block: Block;
  readonly residualSd: number | null;
  readonly sds: Float64Array;
  readonly values: Float64Array;
}): Float64Array {
  return timesPrecision(blockPrecision(given), given.values);
}
