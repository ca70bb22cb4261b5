import { at, indexAt } from "../linear-algebra";
import { blockPrecision, type BlockAtSds } from "./block-precision";
import { rowTimes } from "./cell-rows";
import type { ToLearn } from "./joint-cells";
import { blockInAll } from "./leave-out";
import type { SurfaceSolution } from "./solve-surface";
import type { GroupPosterior, SurfacePosterior } from "./surface-posterior";

/** A reading that could be taken: like one of a block's, but for a part of its error. */
export interface ReadingToTake {
  /** The reading of the block that it is like. */
  readonly row: number;
  /** The part of that reading's own variance that the new one does not share. */
  readonly replacedVariance: number;
  /** Variance of the new one's own error, in place of it. */
  readonly freshVariance: number;
}

/**
 * What one more reading of a block would be, given all readings.
 *
 * With V the block's own covariance, P its part of Σ⁻¹, i the reading that the new one is like, d what is replaced and f what comes in
 * its place: the new one has variance d + f − d²Pᵢᵢ, and covaries with any cell as d·V⁻¹eᵢ times the cells of the block do.
 *
 * @param posterior of the block's group, with covariances.
 */
export function readingsOfBlock(
  task: BlockAtSds & { readonly posterior: GroupPosterior },
): (reading: ReadingToTake) => Pick<ToLearn, "loads" | "covariance"> {
  const { block, posterior } = task;
  const { precision } = blockInAll(task);
  const { count, effects, own, shared } = blockPrecision(task);
  return ({ row, replacedVariance, freshVariance }) => {
    const loads = new Float64Array(posterior.mean.length);
    for (let j = 0; j < count; j += 1) {
      let value = j === row ? at(own, row) : 0;
      for (let offset = 0; offset < effects * count; offset += count)
        value -= at(shared, offset + row) * at(shared, offset + j);
      const cell = indexAt(block.cells, j);
      loads[cell] = at(loads, cell) + replacedVariance * value;
    }
    const variance = replacedVariance + freshVariance - replacedVariance ** 2 * at(precision, row * count + row);
    return { loads, covariance: Float64Array.of(variance) };
  };
}

/**
 * Covariances of a shared column with the cells: (I − cP)·rows·Cov(shared), by the notation of `surfacePosterior`.
 *
 * @returns group by group.
 */
export function columnWithCells(
  { groups, cellVariance }: SurfaceSolution,
  { sharedCovariance }: Pick<SurfacePosterior, "sharedCovariance">,
  column: number,
): Float64Array[] {
  const columns = Math.round(Math.sqrt(sharedCovariance.length));
  const withShared = sharedCovariance.slice(column * columns, (column + 1) * columns);
  return groups.map(({ rows, precision }) => {
    const moved = Float64Array.from({ length: rows.cells }, (_, cell) => rowTimes(rows, cell, withShared));
    return moved.map((value, cell) => {
      let lost = 0;
      for (let other = 0; other < rows.cells; other += 1)
        lost += at(precision, cell * rows.cells + other) * at(moved, other);
      return value - cellVariance * lost;
    });
  });
}
