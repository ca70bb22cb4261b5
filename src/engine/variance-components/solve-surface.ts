import {
  at,
  indexAt,
  cholesky,
  inverseFromFactor,
  logDeterminant,
  solveLower,
  solveUpper,
  type Matrix,
} from "../linear-algebra";
import type { GroupInformation, Information } from "./information";
import { addRow, rowTimes } from "./cell-rows";
import { filled, integratedLowRank, type LowRank } from "./low-rank";
import type { CellRows, SharedColumn, Surface } from "./variance-model";

/** A group's part of a solution, the cells' own deviations integrated out. */
export interface SolvedGroup {
  readonly information: GroupInformation;
  readonly rows: CellRows;
  /** Information about the cells' shared part: its precision, and the remaining `right` at the solution. */
  readonly precision: Float64Array;
  /** The same precision, where the information was of low rank. */
  readonly lowRank: LowRank | null;
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

/** Where c times the largest information is below this, (I − (I + cΛ)⁻¹)/c would lose digits. */
const LEAST_INFORMATION = 1e-4;

/** P = (Λ⁻¹ + cI)⁻¹ = (I + cΛ)⁻¹Λ, which also works for a singular Λ and for a variance of 0. */
function integrateCells(group: GroupInformation, cellVariance: number) {
  return group.lowRank === null
    ? integrateWhole(group, cellVariance)
    : integrateLowRank(group, group.lowRank, cellVariance);
}

function integrateLowRank({ right: given }: GroupInformation, information: LowRank, cellVariance: number) {
  const found = integratedLowRank(information, cellVariance);
  if (found === null) throw new RangeError(NOT_FINITE);
  const precision = filled(found);
  const right = given.slice();
  const { length: cells } = right;
  let minusTwo = found.logDeterminant;
  for (let i = 0; i < cells; i += 1) {
    let along = 0;
    for (let j = 0; j < cells; j += 1) along += at(precision, i * cells + j) * at(given, j);
    right[i] = at(given, i) - cellVariance * along;
    minusTwo -= cellVariance * at(given, i) * at(right, i);
  }
  return { precision, lowRank: found, right, minusTwo };
}

function integrateWhole({ cells, precision: information, right: given }: GroupInformation, cellVariance: number) {
  const right = given.slice();
  if (cellVariance === 0) return { precision: information.slice(), lowRank: null, right, minusTwo: 0 };
  const factor = factorOfCells(information, cells, cellVariance);
  solveLower(factor, right);
  let minusTwo = logDeterminant(factor);
  for (const value of right) minusTwo -= cellVariance * value * value;
  solveUpper(factor, right);
  return { precision: integratedPrecision(factor, information, cellVariance), lowRank: null, right, minusTwo };
}

const NOT_FINITE = "a group's information is not finite";

/** Of I + cΛ. */
function factorOfCells(information: Float64Array, cells: number, cellVariance: number): Matrix {
  const inner = new Float64Array(cells * cells);
  for (let k = 0; k < inner.length; k += 1) inner[k] = cellVariance * at(information, k);
  for (let cell = 0; cell < cells; cell += 1) inner[cell * cells + cell] = at(inner, cell * cells + cell) + 1;
  const factor = cholesky({ rows: cells, columns: cells, values: inner });
  if (factor === null) throw new RangeError(NOT_FINITE);
  return factor;
}

function integratedPrecision(factor: Matrix, information: Float64Array, cellVariance: number): Float64Array {
  const cells = factor.rows;
  let largest = 0;
  for (let cell = 0; cell < cells; cell += 1) largest = Math.max(largest, at(information, cell * cells + cell));
  if (cellVariance * largest < LEAST_INFORMATION) {
    const precision = information.slice();
    solveLower(factor, precision, cells);
    solveUpper(factor, precision, cells);
    return precision;
  }
  const precision = inverseFromFactor(factor);
  for (let k = 0; k < precision.length; k += 1) precision[k] = -at(precision, k) / cellVariance;
  for (let cell = 0; cell < cells; cell += 1)
    precision[cell * cells + cell] = at(precision, cell * cells + cell) + 1 / cellVariance;
  return precision;
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

/** XᵀPX in the lower triangle, and Xᵀ times the group's right. */
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
    let entry = 0;
    for (let j = 0; j < cells; j += 1) {
      const value = at(precision, i * cells + j);
      for (const end = indexAt(starts, j + 1); entry < end; entry += 1) {
        const column = indexAt(columns, entry);
        along[column] = at(along, column) + value * at(weights, entry);
      }
    }
    for (entry = indexAt(starts, i); entry < indexAt(starts, i + 1); entry += 1) {
      const column = indexAt(columns, entry);
      const start = column * size;
      const weight = at(weights, entry);
      for (let other = 0; other <= column; other += 1)
        inner[start + other] = at(inner, start + other) + weight * at(along, other);
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
