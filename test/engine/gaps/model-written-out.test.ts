import { describe, expect, it } from "vitest";
import { causeCandidates, gapReadings, gapSurface, sameInput } from "@/engine/gaps";
import { sizeScale } from "@/engine/pattern";
import { chooseSwatch, swatchUncertainty } from "@/engine/prediction";
import { crochetedCardigan, simulateCall } from "@/engine/simulation";
import { gatherInformation, solveSurface, surfacePosterior } from "@/engine/variance-components";

/*
 * The model of docs/method.md#gap-model written out as one normal distribution of all readings, and worked with as such:
 * a matrix over all readings and one over all cells, which the engine never builds.
 */

const PATTERN = crochetedCardigan();
const MEASUREMENTS = PATTERN.measurements.length;
const CELLS = PATTERN.sizes.length * MEASUREMENTS;
/** Offset, step, cell; drift across, along; reading. */
const SDS = Float64Array.of(0.4, 0.25, 0.2, 0.022, 0.03, 0.5);
const [OFFSET = 0, STEP = 0, CELL = 0, ACROSS = 0, ALONG = 0, READING = 0] = SDS;
/** `LEAST_READING_SD` of the method. */
const SMALLEST_READING_SD = 0.01;

type Matrix = readonly (readonly number[])[];

function matrix(rows: number, columns: number, valueOf: (row: number, column: number) => number): Matrix {
  return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => valueOf(row, column)));
}

function entry(of: Matrix, row: number, column: number): number {
  return of[row]?.[column] ?? Number.NaN;
}

function product(left: Matrix, right: Matrix): Matrix {
  return matrix(left.length, right[0]?.length ?? 0, (row, column) =>
    (left[row] ?? []).reduce((sum, value, k) => sum + value * entry(right, k, column), 0),
  );
}

/** By Gauss and Jordan; of a symmetric positive definite matrix. */
function inverse(of: Matrix): { readonly values: Matrix; readonly logDeterminant: number } {
  const size = of.length;
  const work = of.map((row, at) => [...row, ...row.map((_, column) => (column === at ? 1 : 0))]);
  let logDeterminant = 0;
  for (let pivot = 0; pivot < size; pivot += 1) {
    const divisor = entry(work, pivot, pivot);
    logDeterminant += Math.log(divisor);
    const own = (work[pivot] ?? []).map((value) => value / divisor);
    work.forEach((row, at) => {
      const times = row[pivot] ?? 0;
      work[at] = at === pivot ? own : row.map((value, column) => value - times * (own[column] ?? 0));
    });
  }
  return { values: work.map((row) => row.slice(size)), logDeterminant };
}

const simulated = simulateCall({
  pattern: PATTERN,
  real: PATTERN,
  cellErrorCm: (_size, measurement) => (measurement === "neck" ? 1.3 : 0),
  testers: { s: 2, m: 1, l: 2, x2: 2 },
  places: Object.fromEntries(PATTERN.sizes.map(({ id }) => [id, { least: 0, wanted: 4 }])),
  habits: {
    ...{ gaugeSpread: 0.05, driftSd: 0.022, readingSd: 0.5, roundCm: 0.1, missingReadings: 0.05, missingSwatches: 0 },
    ...{ entryErrorShare: 0, yarnRatio: 4.6 },
  },
  seed: 7,
});
/** Two testers measured some of their garment again, one of them twice. */
const AGAIN_CM: Readonly<Record<string, readonly number[]>> = { "tester-1": [61.3], "tester-4": [70.2, 71.1] };
const call = {
  ...simulated.call,
  testers: simulated.call.testers.map((tester) => {
    const [first] = tester.readings;
    const again = (AGAIN_CM[tester.id] ?? []).flatMap((cm) => (first === undefined ? [] : [{ ...first, cm }]));
    return { ...tester, readings: [...tester.readings, ...again] };
  }),
};
const { testers, readings } = gapReadings(call);
const rows = testers.flatMap(({ tester, size, gaps }, block) =>
  gaps.map(({ measurement, toleranceCm, gapCm, split }) => {
    const { acrossCm, alongCm } = split.byFabric.get("main") ?? { acrossCm: 0, alongCm: 0 };
    return {
      ...{ block, cell: size * MEASUREMENTS + measurement, gap: gapCm / toleranceCm },
      ...{ across: acrossCm / toleranceCm, along: alongCm / toleranceCm },
      swatch: chooseSwatch(tester.swatches, "main"),
    };
  }),
);
const candidates = causeCandidates(
  PATTERN,
  Array.from({ length: CELLS }, () => true),
);
const band = candidates.find(({ input }) => sameInput(input, { kind: "allowance", id: "front-band" }));

function writtenOut(causes: typeof candidates) {
  const scale = sizeScale(PATTERN);
  const z = (cell: number) => scale.get(PATTERN.sizes[Math.floor(cell / MEASUREMENTS)]?.id ?? "") ?? Number.NaN;
  const cells = matrix(CELLS, CELLS, (one, other) => {
    const isSameMeasurement = one % MEASUREMENTS === other % MEASUREMENTS;
    const ofMeasurement = isSameMeasurement ? OFFSET ** 2 + STEP ** 2 * z(one) * z(other) : 0;
    const ofCauses = causes.reduce(
      (sum, { priorSd, sensitivities }) => sum + priorSd ** 2 * (sensitivities[one] ?? 0) * (sensitivities[other] ?? 0),
      0,
    );
    return ofMeasurement + ofCauses + (one === other ? CELL ** 2 : 0);
  });
  const variance = matrix(rows.length, rows.length, (i, j) => {
    const [one, other] = [rows[i], rows[j]];
    if (one?.swatch === undefined || other === undefined) throw new Error("everybody has a swatch");
    const { stitches, rows: ofRows } = swatchUncertainty(one.swatch);
    const across = one.across * other.across * (stitches ** 2 + ACROSS ** 2);
    const along = one.along * other.along * (ofRows ** 2 + ALONG ** 2);
    const ofTester = one.block === other.block ? across + along : 0;
    const ofReading = i === j ? SMALLEST_READING_SD ** 2 + READING ** 2 : 0;
    // Readings of the same measurement of the same garment have half of the reading's error in common.
    const ofGarment = i !== j && one.block === other.block && one.cell === other.cell ? READING ** 2 / 2 : 0;
    return entry(cells, one.cell, other.cell) + ofTester + ofGarment + ofReading;
  });
  const { values: precision, logDeterminant } = inverse(variance);
  const gaps = matrix(rows.length, 1, (row) => rows[row]?.gap ?? Number.NaN);
  const weighted = product(precision, gaps);
  const square = rows.reduce((sum, { gap }, row) => sum + gap * entry(weighted, row, 0), 0);
  const between = matrix(CELLS, rows.length, (cell, row) => entry(cells, cell, rows[row]?.cell ?? -1));
  const known = product(between, precision);
  return {
    logLikelihood: -(rows.length * Math.log(2 * Math.PI) + logDeterminant + square) / 2,
    means: product(known, gaps).map(([mean]) => mean ?? Number.NaN),
    variances: between.map((row, cell) => {
      const taken = row.reduce((sum, value, at) => sum + value * entry(known, cell, at), 0);
      return entry(cells, cell, cell) - taken;
    }),
  };
}

function byTheEngine(causes: typeof candidates) {
  const solution = solveSurface(gapSurface(PATTERN, causes), gatherInformation(readings, SDS), SDS);
  if (solution === null) throw new Error("not solved");
  const { groups } = surfacePosterior(solution);
  return {
    logLikelihood: solution.logLikelihood,
    means: groups.flatMap(({ mean }) => [...mean]),
    variances: groups.flatMap(({ mean, covariance }) =>
      [...mean].map((_, at) => covariance[at * mean.length + at] ?? 0),
    ),
  };
}

describe("the gap model, worked with block by block and written out whole", () => {
  it.each([
    ["without causes", []],
    ["with an allowance that is wrong", band === undefined ? [] : [band]],
  ])("agree %s: likelihood, cells' means and variances, those of untested sizes too", (name, causes) => {
    expect(causes).toHaveLength(name === "without causes" ? 0 : 1);
    const expected = writtenOut(causes);
    const found = byTheEngine(causes);
    expect(found.logLikelihood).toBeCloseTo(expected.logLikelihood, 9);
    expect(found.means).toHaveLength(CELLS);
    found.means.forEach((mean, cell) => expect(mean).toBeCloseTo(expected.means[cell] ?? Number.NaN, 9));
    found.variances.forEach((value, cell) => expect(value).toBeCloseTo(expected.variances[cell] ?? Number.NaN, 9));
  });
});
