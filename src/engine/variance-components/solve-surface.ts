import { at, indexAt, cholesky, logDeterminant, solveLower, solveUpper, type Matrix } from "../linear-algebra";
import type { GroupInformation, Information } from "./information";
import { addRow, rowTimes } from "./cell-rows";
import type { CellRows, SharedColumn, Surface } from "./variance-model";

/** A group's part of a solution, the cells' own deviations integrated out. */
export interface SolvedGroup {
  readonly information: GroupInformation;
  readonly rows: CellRows;
  /** Information about the cells' shared part: its precision, and the remaining `right` at the solution. */
  readonly precision: Float64Array;
  readonly score: Float64Array;
}

/** The surface at given standard deviations. */
export interface SurfaceSolution {
  readonly surface: Surface;
  readonly information: Information;
  readonly sds: Float64Array;
  readonly cellVariance: number;
  readonly logLikelihood: number;
  readonly groups: readonly SolvedGroup[];
  /** Prior sd of each shared column, 1 for a fixed one. */
  readonly scales: Float64Array;
  /** Factor of the scaled precision of the shared columns. */
  readonly sharedFactor: Matrix;
  readonly shared: Float64Array;
}

/**
 * Best linear unbiased prediction of a surface of cells, and its likelihood: restricted where columns are fixed, else marginal.
 *
 * @param sds the standard deviations, by index; a zero removes its effects.
 * @returns the solution, null if the fixed columns are not identified or a number is not finite.
 * @see Henderson 1975; Harville 1977 for the restricted likelihood.
 */
export function solveSurface(surface: Surface, information: Information, sds: Float64Array): SurfaceSolution | null {
  const cellVariance = surface.cellSd === null ? 0 : at(sds, surface.cellSd) ** 2;
  const scales = new Float64Array(surface.columns.length);
  surface.columns.forEach((column, index) => {
    scales[index] = scaleOf(column, sds);
  });
  let deviance = information.constant + information.readings * Math.log(2 * Math.PI);
  const partial = surface.rows.flatMap((rows, index) => {
    const group = information.groups[index];
    if (group === undefined) return [];
    const integrated = integrateCells(group, cellVariance);
    deviance += integrated.minusTwo;
    return [{ information: group, rows, ...integrated }];
  });
  const { inner, right } = sharedSystem(surface.columns, scales, partial);
  const sharedFactor = cholesky(inner);
  if (sharedFactor === null) return null;
  const shared = right.slice();
  solveLower(sharedFactor, shared);
  for (const value of shared) deviance -= value * value;
  solveUpper(sharedFactor, shared);
  for (let column = 0; column < shared.length; column += 1) shared[column] = at(shared, column) * at(scales, column);
  const fixed = surface.columns.filter(({ kind }) => kind === "fixed").length;
  deviance += logDeterminant(sharedFactor) - fixed * Math.log(2 * Math.PI);
  const groups = partial.map((group) => ({ ...group, score: scoreAt(group, shared) }));
  return {
    surface,
    information,
    sds,
    cellVariance,
    logLikelihood: -deviance / 2,
    groups,
    scales,
    sharedFactor,
    shared,
  };
}

function scaleOf(column: SharedColumn, sds: Float64Array): number {
  switch (column.kind) {
    case "fixed":
      return 1;
    case "known":
      return Math.sqrt(column.variance);
    case "fitted":
      return at(sds, column.sd);
  }
}

/** (Λ⁻¹ + cI)⁻¹ = (I + cΛ)⁻¹Λ, which also works for a singular Λ and for a variance of 0. */
function integrateCells(group: GroupInformation, cellVariance: number) {
  const { cells } = group;
  const inner = new Float64Array(cells * cells);
  for (let k = 0; k < inner.length; k += 1) inner[k] = cellVariance * at(group.precision, k);
  for (let cell = 0; cell < cells; cell += 1) inner[cell * cells + cell] = at(inner, cell * cells + cell) + 1;
  const factor = cholesky({ rows: cells, columns: cells, values: inner });
  if (factor === null) throw new RangeError("a group's information is not finite");
  const precision = group.precision.slice();
  const right = group.right.slice();
  if (cellVariance === 0) return { precision, right, minusTwo: 0 };
  solveLower(factor, precision, cells);
  solveUpper(factor, precision, cells);
  solveLower(factor, right);
  let minusTwo = logDeterminant(factor);
  for (const value of right) minusTwo -= cellVariance * value * value;
  solveUpper(factor, right);
  return { precision, right, minusTwo };
}

type PartlySolved = Omit<SolvedGroup, "score"> & { readonly right: Float64Array };

/** Only the lower triangle is filled. */
function sharedSystem(columns: readonly SharedColumn[], scales: Float64Array, groups: readonly PartlySolved[]) {
  const size = columns.length;
  const inner = new Float64Array(size * size);
  const right = new Float64Array(size);
  for (const group of groups) addGroup(group, { inner, right });
  for (let row = 0; row < size; row += 1) {
    right[row] = at(right, row) * at(scales, row);
    for (let column = 0; column <= row; column += 1)
      inner[row * size + column] = at(inner, row * size + column) * at(scales, row) * at(scales, column);
    if (columns[row]?.kind !== "fixed") inner[row * size + row] = at(inner, row * size + row) + 1;
  }
  return { inner: { rows: size, columns: size, values: inner }, right };
}

function addGroup(
  { rows, precision, right: groupRight }: PartlySolved,
  { inner, right }: { inner: Float64Array; right: Float64Array },
): void {
  const size = right.length;
  const { cells, starts, columns, weights } = rows;
  const along = new Float64Array(size);
  for (let i = 0; i < cells; i += 1) {
    addRow(right, { rows, cell: i, factor: at(groupRight, i) });
    along.fill(0);
    for (let j = 0; j < cells; j += 1) addRow(along, { rows, cell: j, factor: at(precision, i * cells + j) });
    for (let entry = indexAt(starts, i); entry < indexAt(starts, i + 1); entry += 1) {
      const row = indexAt(columns, entry);
      const weight = at(weights, entry);
      for (let column = 0; column <= row; column += 1)
        inner[row * size + column] = at(inner, row * size + column) + weight * at(along, column);
    }
  }
}

function scoreAt({ rows, precision, right }: PartlySolved, shared: Float64Array): Float64Array {
  const { cells } = rows;
  const score = right.slice();
  for (let j = 0; j < cells; j += 1) {
    const fitted = rowTimes(rows, j, shared);
    for (let i = 0; i < cells; i += 1) score[i] = at(score, i) - at(precision, i * cells + j) * fitted;
  }
  return score;
}
