import { describe, expect, it } from "vitest";
import { seededRandom, type SeededRandom } from "@/engine/seeded-random";
import {
  cellRows,
  gatherInformation,
  solveSurface,
  surfacePosterior,
  type Block,
  type Readings,
  type Surface,
} from "@/engine/variance-components";

/*
 * Small random models written out as one normal distribution of all readings, with matrices over all of them, as the routine
 * never builds: its half products and low ranks must not change a result by more than 1e-8 of it.
 */

const [OFFSET, CELL, EFFECT, RESIDUAL] = [0, 1, 2, 3];
const GROUPS = [5, 5, 9];
const COLUMNS = 6;

type Matrix = number[][];

/** Cells may be read twice, not at all, and in any order. */
function drawnModel(random: SeededRandom) {
  const rows = GROUPS.map((cells) =>
    Array.from({ length: cells }, (_, cell) => [
      { column: cell % COLUMNS, weight: 1 },
      { column: (cell + 2) % COLUMNS, weight: random.normal() },
    ]),
  );
  const columns: Surface["columns"] = Array.from({ length: COLUMNS }, (_, column) =>
    column < 4 ? { kind: "fitted", sd: OFFSET } : { kind: "known", variance: 0.3 + column / 10 },
  );
  const surface: Surface = { columns, rows: rows.map(cellRows), cellSd: CELL };
  const groups = GROUPS.map((cells) => ({
    cells,
    blocks: Array.from({ length: 1 + random.below(3) }, () => drawnBlock(cells, random)),
  }));
  return { rows, surface, readings: { groups, residualSd: RESIDUAL } };
}

function drawnBlock(cells: number, random: SeededRandom): Block {
  const count = 1 + random.below(cells + 2);
  const drawn = (scale: number) => Float64Array.from({ length: count }, () => scale * random.normal());
  return {
    values: drawn(1),
    cells: Int32Array.from({ length: count }, () => random.below(cells)),
    knownVariances: drawn(0.3).map((value) => 0.01 + value ** 2),
    residualShares: drawn(1).map((value) => Math.min(1, Math.abs(value))),
    effects: [
      { weights: drawn(1), knownVariance: 0.1, sd: EFFECT },
      { weights: drawn(0.5), knownVariance: 0.4, sd: null },
    ],
  };
}

function writtenOut({ rows, surface, readings }: ReturnType<typeof drawnModel>, sds: Float64Array) {
  const sdOf = (index: number) => sds[index] ?? Number.NaN;
  const cells = rows.flat().map((row) => surface.columns.map((_, column) => weightIn(row, column)));
  const variances = surface.columns.map((column) => {
    if (column.kind === "known") return column.variance;
    return column.kind === "fitted" ? sdOf(column.sd) ** 2 : Number.NaN;
  });
  const between = matrix(cells.length, cells.length, (i, j) => {
    const shared = variances.reduce((sum, v, k) => sum + v * (cells[i]?.[k] ?? 0) * (cells[j]?.[k] ?? 0), 0);
    return shared + (i === j ? sdOf(CELL) ** 2 : 0);
  });
  const read = listed(readings);
  const variance = matrix(read.length, read.length, (i, j) => {
    const [one, other] = [read[i], read[j]];
    if (one === undefined || other === undefined) return Number.NaN;
    const ofCells = between[one.cell]?.[other.cell] ?? Number.NaN;
    if (one.block !== other.block) return ofCells;
    const { effects, knownVariances, residualShares } = one.block;
    const ofEffects = effects.reduce(
      (sum, { weights, knownVariance, sd }) =>
        sum + (knownVariance + (sd === null ? 0 : sdOf(sd) ** 2)) * (weights[one.row] ?? 0) * (weights[other.row] ?? 0),
      0,
    );
    const own = (knownVariances[one.row] ?? 0) + sdOf(RESIDUAL) ** 2 * (residualShares[one.row] ?? 0);
    return ofCells + ofEffects + (i === j ? own : 0);
  });
  const { inverse, logDeterminant } = inverted(variance);
  const values = read.map(({ block, row }) => block.values[row] ?? Number.NaN);
  const weighted = inverse.map((row) => dot(row, values));
  const withReadings = between.map((row) => read.map(({ cell }) => row[cell] ?? Number.NaN));
  const own = between.map((_, i) => read.map(({ cell }) => (cell === i ? sdOf(CELL) ** 2 : 0)));
  const gains = withReadings.map((row) => inverse.map((column) => dot(row, column)));
  const ownGains = own.map((row) => inverse.map((column) => dot(row, column)));
  return {
    logLikelihood: -(read.length * Math.log(2 * Math.PI) + logDeterminant + dot(values, weighted)) / 2,
    mean: withReadings.map((row) => dot(row, weighted)),
    covariance: between.map((row, i) => row.map((value, j) => value - dot(gains[i] ?? [], withReadings[j] ?? []))),
    ownMean: own.map((row) => dot(row, weighted)),
    ownVariance: own.map((row, i) => sdOf(CELL) ** 2 - dot(ownGains[i] ?? [], row)),
  };
}

function weightIn(row: readonly { readonly column: number; readonly weight: number }[], column: number): number {
  return row.reduce((sum, entry) => sum + (entry.column === column ? entry.weight : 0), 0);
}

function listed({ groups }: Readings) {
  let first = 0;
  return groups.flatMap(({ cells, blocks }) => {
    const start = first;
    first += cells;
    return blocks.flatMap((block) => Array.from(block.cells, (cell, row) => ({ block, row, cell: start + cell })));
  });
}

function matrix(rows: number, columns: number, valueOf: (row: number, column: number) => number): Matrix {
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_none, column) => valueOf(row, column)),
  );
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, k) => sum + value * (right[k] ?? Number.NaN), 0);
}

/** By Gauss and Jordan; of a symmetric positive definite matrix. */
function inverted(of: Matrix): { inverse: Matrix; logDeterminant: number } {
  const size = of.length;
  const work = of.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  let logDeterminant = 0;
  for (let pivot = 0; pivot < size; pivot += 1) {
    const divisor = work[pivot]?.[pivot] ?? Number.NaN;
    logDeterminant += Math.log(divisor);
    const own = (work[pivot] ?? []).map((value) => value / divisor);
    work.forEach((row, i) => {
      const times = row[pivot] ?? 0;
      work[i] = i === pivot ? own : row.map((value, j) => value - times * (own[j] ?? 0));
    });
  }
  return { inverse: work.map((row) => row.slice(size)), logDeterminant };
}

function expectAlike(found: number, expected: number): void {
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(expected)));
}

describe("a surface solved group by group and written out whole", () => {
  it.each([0.9, 0.2, 0.01, 1e-3, 1e-5, 0])("agree where the cells' own sd is %d", (cellSd) => {
    for (let seed = 1; seed <= 8; seed += 1) {
      const model = drawnModel(seededRandom(seed));
      const sds = Float64Array.of(0.6, cellSd, 0.4, 0.5);
      const expected = writtenOut(model, sds);
      const solution = solveSurface(model.surface, gatherInformation(model.readings, sds), sds);
      if (solution === null) throw new Error("not solved");
      expectAlike(solution.logLikelihood, expected.logLikelihood);
      const [whole, without] = [true, false].map((covariances) => surfacePosterior(solution, { covariances }));
      let first = 0;
      whole?.groups.forEach(({ mean, covariance, ownVariance, ownSquares }, group) => {
        const cells = mean.length;
        mean.forEach((value, i) => {
          expectAlike(value, expected.mean[first + i] ?? Number.NaN);
          for (let j = 0; j < cells; j += 1)
            expectAlike(covariance[i * cells + j] ?? Number.NaN, expected.covariance[first + i]?.[first + j] ?? 0);
        });
        const own = expected.ownVariance.slice(first, first + cells).reduce((sum, value) => sum + value, 0);
        const squares = expected.ownMean.slice(first, first + cells).reduce((sum, value) => sum + value ** 2, own);
        for (const found of [ownVariance, without?.groups[group]?.ownVariance]) expectAlike(found ?? Number.NaN, own);
        for (const found of [ownSquares, without?.groups[group]?.ownSquares]) expectAlike(found ?? Number.NaN, squares);
        first += cells;
      });
    }
  });

  it("gathers the same information with slopes and without", () => {
    const { readings } = drawnModel(seededRandom(3));
    const sds = Float64Array.of(0.6, 0.2, 0.4, 0.5);
    const [withSlopes, without] = [true, false].map((slopes) =>
      gatherInformation(readings, sds, { withSlopes: slopes }),
    );
    expect(without?.constant).toBe(withSlopes?.constant);
    without?.groups.forEach(({ precision, right, precisionSlopes }, group) => {
      expect(precision).toEqual(withSlopes?.groups[group]?.precision);
      expect(right).toEqual(withSlopes?.groups[group]?.right);
      expect(precisionSlopes.every((slopes) => slopes === undefined)).toBe(true);
    });
  });
});
