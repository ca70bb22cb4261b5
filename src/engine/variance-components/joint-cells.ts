import { at, cholesky, indexAt, rowProducts, solveLower, transposed } from "../linear-algebra";
import type { SurfaceSolution } from "./solve-surface";
import type { GroupPosterior, SurfacePosterior } from "./surface-posterior";

/** The cells of all groups given the readings. */
export interface JointCells {
  readonly groups: readonly GroupPosterior[];
  /** Covariance of cell i of a group and cell j of another, or of the same, at `i * cells of the other + j`. */
  readonly covariance: (group: number, other: number) => Float64Array;
}

/**
 * How the cells of different groups hang together: by the shared columns alone.
 *
 * With W a group's rows, P its precision once its own deviations, of variance c, are integrated out, and S the shared columns'
 * covariance, cells of two groups have the covariance (I − cP)·W·S·Wᵀ·(I − cP)ᵀ, each factor of its own group.
 */
export function jointCells(solution: SurfaceSolution, { groups, sharedCovariance }: SurfacePosterior): JointCells {
  const columns = solution.scales.length;
  const moved = solution.groups.map((group) => movedByShared(group, solution.cellVariance, columns));
  const weighted = moved.map((rows) => timesSquare(rows, sharedCovariance, columns));
  const known = new Map<number, Float64Array>();
  return {
    groups,
    covariance: (group, other) => {
      if (group === other) return groups[group]?.covariance ?? new Float64Array();
      const key = group * groups.length + other;
      const found = known.get(key);
      if (found !== undefined) return found;
      const [left, right] = [weighted[group] ?? new Float64Array(), moved[other] ?? new Float64Array()];
      const product = rowProducts(left, right, columns);
      known.set(key, product);
      return product;
    },
  };
}

/** (I − cP)·W, cell i and column k at `i * columns + k`. */
function movedByShared(
  { rows, precision }: SurfaceSolution["groups"][number],
  cellVariance: number,
  columns: number,
): Float64Array {
  const { cells, starts, columns: of, weights } = rows;
  const moved = new Float64Array(cells * columns);
  for (let j = 0; j < cells; j += 1) {
    for (let entry = indexAt(starts, j); entry < indexAt(starts, j + 1); entry += 1) {
      const column = indexAt(of, entry);
      const weight = at(weights, entry);
      for (let i = 0; i < cells; i += 1) {
        const kept = (i === j ? 1 : 0) - cellVariance * at(precision, i * cells + j);
        moved[i * columns + column] = at(moved, i * columns + column) + kept * weight;
      }
    }
  }
  return moved;
}

function timesSquare(rows: Float64Array, square: Float64Array, columns: number): Float64Array {
  const product = new Float64Array(rows.length);
  for (let row = 0; row < rows.length; row += columns) {
    for (let k = 0; k < columns; k += 1) {
      const weight = at(rows, row + k);
      if (weight === 0) continue;
      for (let column = 0; column < columns; column += 1)
        product[row + column] = at(product, row + column) + weight * at(square, k * columns + column);
    }
  }
  return product;
}

/** Something that could be learnt of a group's cells: numbers that each move with them. */
export interface ToLearn {
  readonly group: number;
  /** Number k covaries with any cell as `loads[j * numbers + k]` times the group's cell j does, summed over j. */
  readonly loads: Float64Array;
  /** Covariance of the numbers given all readings, k and l at `k * numbers + l`. */
  readonly covariance: Float64Array;
}

/**
 * Variances of any group's cells once something is learnt of its own or another group's.
 *
 * @returns by group, in the cells' order; today's where the numbers to learn are linearly dependent in double precision.
 */
export function variancesOnceLearnt(joint: JointCells, toLearn: ToLearn): (group: number) => Float64Array {
  const numbers = Math.round(Math.sqrt(toLearn.covariance.length));
  const others = toLearn.loads.length / numbers;
  const factor = cholesky({ rows: numbers, columns: numbers, values: toLearn.covariance });
  // Of the numbers, made independent with variance 1.
  const loads = transposed(toLearn.loads, numbers);
  if (factor !== null) solveLower(factor, loads, others);
  return (group) => {
    const { mean, covariance } = joint.groups[group] ?? { mean: new Float64Array(), covariance: new Float64Array() };
    const cells = mean.length;
    const variances = Float64Array.from({ length: cells }, (_, cell) => at(covariance, cell * cells + cell));
    if (factor === null) return variances;
    const withNumbers = rowProducts(loads, joint.covariance(group, toLearn.group), others);
    for (let k = 0; k < numbers; k += 1) {
      for (let cell = 0; cell < cells; cell += 1)
        variances[cell] = at(variances, cell) - at(withNumbers, k * cells + cell) ** 2;
    }
    return variances.map((variance) => Math.max(0, variance));
  };
}
