import { describe, expect, it } from "vitest";
import { cellRows, likelihoodCurvature, type Block, type Readings, type Surface } from "@/engine/variance-components";

/** One cell whose value is known to be 0, so that readings are their blocks' effects and errors. */
const NOTHING: Surface = { columns: [], rows: [cellRows([[]])], cellSd: null };

const BLOCKS = [
  [0.4, 1.1, -0.2],
  [-0.9, -1.3, 0.1],
  [0.6, 0.2, 1.7],
  [-0.3, 0.8, 0.5],
];

function readings(withEffect: boolean): Readings {
  const blocks = BLOCKS.map((values): Block => {
    const weights = new Float64Array(values.length).fill(1);
    return {
      values: Float64Array.from(values),
      cells: new Int32Array(values.length),
      knownVariances: new Float64Array(values.length),
      residualShares: new Float64Array(values.length).fill(1),
      effects: withEffect ? [{ weights, knownVariance: 0, sd: 1 }] : [],
    };
  });
  return { groups: [{ cells: 1, blocks }], residualSd: 0 };
}

/** Of balanced blocks, by their within and between sums of squares (Searle, Casella & McCulloch 1992, 3.7). */
function logLikelihood(logResidual: number, logEffect: number): number {
  const each = 3;
  const residual = Math.exp(2 * logResidual);
  const between = residual + each * Math.exp(2 * logEffect);
  let sum = 0;
  for (const values of BLOCKS) {
    const mean = values.reduce((total, value) => total + value, 0) / each;
    const within = values.reduce((total, value) => total + (value - mean) ** 2, 0);
    sum -= ((each - 1) * Math.log(residual) + within / residual + Math.log(between) + (each * mean ** 2) / between) / 2;
  }
  return sum;
}

describe("likelihoodCurvature", () => {
  it("is twice the sum of squares over the variance for readings with an error of their own alone", () => {
    // By hand: log L = −n·ln σ − S ÷ 2σ², by ln σ twice.
    const squares = BLOCKS.flat().reduce((sum, value) => sum + value * value, 0);
    const curvature = likelihoodCurvature({ readings: readings(false), surface: NOTHING, sds: Float64Array.of(0.7) });
    expect(curvature?.values[0]).toBeCloseTo((2 * squares) / 0.49, 4);
  });

  it("has the curvatures of balanced blocks, mixed ones too", () => {
    const sds = Float64Array.of(0.7, 0.4);
    const [a, b] = [Math.log(0.7), Math.log(0.4)];
    const h = 1e-3;
    const at = logLikelihood(a, b);
    const own = (more: number, less: number) => -(more - 2 * at + less) / h ** 2;
    const mixed =
      (logLikelihood(a + h, b + h) -
        logLikelihood(a + h, b - h) -
        logLikelihood(a - h, b + h) +
        logLikelihood(a - h, b - h)) /
      (4 * h ** 2);
    const expected = [
      own(logLikelihood(a + h, b), logLikelihood(a - h, b)),
      -mixed,
      -mixed,
      own(logLikelihood(a, b + h), logLikelihood(a, b - h)),
    ];
    const curvature = likelihoodCurvature({ readings: readings(true), surface: NOTHING, sds });
    expected.forEach((value, index) => expect(curvature?.values[index]).toBeCloseTo(value, 3));
  });

  it("is nothing where a number is not finite", () => {
    const sds = Float64Array.of(Number.POSITIVE_INFINITY);
    expect(likelihoodCurvature({ readings: readings(false), surface: NOTHING, sds })).toBeNull();
  });
});
