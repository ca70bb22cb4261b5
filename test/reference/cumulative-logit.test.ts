import { describe, expect, it } from "vitest";
import { z } from "zod";
import { fitCumulativeLogit, logitCovariance, toldThresholds, type LogitModel, type ScaleAnswers } from "@/engine/fit";
import { readJson } from "./read-json";

const fitted = z.object({
  thresholds: z.array(z.number()),
  weights: z.array(z.number()),
  personSd: z.number(),
  logLikelihood: z.number(),
});
const file = z.object({
  housing: fitted.omit({ personSd: true }).extend({
    answers: z.array(z.int()),
    frequencies: z.array(z.int()),
    columns: z.array(z.int()),
    width: z.int(),
    weightErrors: z.array(z.number()),
  }),
  wine: z.object({
    answers: z.array(z.int()),
    judges: z.array(z.int()),
    columns: z.array(z.int()),
    quadrature: fitted.extend({ errors: z.array(z.number()) }),
    symmetric: fitted,
  }),
});

const FLAT = { mean: 0, sd: Infinity };
const given = readJson("cumulative-logit.json", file);

function flat(count: number, model: Omit<LogitModel, "priors">): LogitModel {
  return { ...model, priors: Array.from({ length: count }, () => FLAT) };
}

/** Tenants one by one, each a person of their own. */
function housing(): ScaleAnswers {
  const { answers, frequencies, columns, width } = given.housing;
  const rows = frequencies.flatMap((frequency, row) => Array.from({ length: frequency }, () => row));
  return {
    steps: 3,
    answers: Int32Array.from(rows, (row) => answers[row] ?? 0),
    columns: {
      rows: rows.length,
      columns: width,
      values: Float64Array.from(rows.flatMap((row) => columns.slice(row * width, (row + 1) * width))),
    },
    starts: Int32Array.from({ length: rows.length + 1 }, (_, index) => index),
  };
}

/** Each judge's answers side by side; before temperature and contact a column of ones where it is asked for. */
function wine(hasLevel: boolean): ScaleAnswers {
  const { answers, judges, columns } = given.wine;
  const rows = judges.map((_, row) => row).toSorted((left, right) => (judges[left] ?? 0) - (judges[right] ?? 0));
  const starts = rows.flatMap((row, index) => (judges[row] === judges[rows[index - 1] ?? -1] ? [] : [index]));
  return {
    steps: 5,
    answers: Int32Array.from(rows, (row) => answers[row] ?? 0),
    columns: {
      rows: rows.length,
      columns: hasLevel ? 3 : 2,
      values: Float64Array.from(
        rows.flatMap((row) => [...(hasLevel ? [1] : []), ...columns.slice(2 * row, 2 * row + 2)]),
      ),
    },
    starts: Int32Array.from([...starts, rows.length]),
  };
}

function fitWine(points: number) {
  const answers = wine(false);
  const model = flat(7, { thresholds: "free", hasPersons: true });
  const start = Float64Array.of(...toldThresholds("free", [-1, 1, 3, 5]), 0, 0, 0);
  const fit = fitCumulativeLogit(answers, model, { quadraturePoints: points, start, tolerance: 1e-8 });
  const covariance = logitCovariance(answers, model, fit);
  return { fit, errorOf: (parameter: number) => Math.sqrt(covariance?.values[parameter * 7 + parameter] ?? NaN) };
}

// Values: MASS and ordinal in R (docs/references.md#cumulative-logit), by the script beside them.
describe("cumulative logit as polr and clmm do it", () => {
  it("finds the weights of 1681 tenants' answers as polr does, with their standard errors", () => {
    const answers = housing();
    const model = flat(8, { thresholds: "free", hasPersons: false });
    const start = Float64Array.of(...toldThresholds("free", [-0.5, 0.5]), 0, 0, 0, 0, 0, 0);
    const fit = fitCumulativeLogit(answers, model, { quadraturePoints: 1, start, tolerance: 1e-7 });
    expect(fit.status).toBe("converged");
    expect(fit.logLikelihood).toBeCloseTo(given.housing.logLikelihood, 6);
    // polr's optimiser leaves parameters good to about five figures.
    given.housing.thresholds.forEach((value, j) => expect(fit.thresholds[j]).toBeCloseTo(value, 4));
    given.housing.weights.forEach((value, j) => expect(fit.weights[j]).toBeCloseTo(value, 4));
    const covariance = logitCovariance(answers, model, fit);
    given.housing.weightErrors.forEach((value, j) =>
      expect(Math.sqrt(covariance?.values[(2 + j) * 8 + 2 + j] ?? NaN)).toBeCloseTo(value, 4),
    );
  });

  it.each([
    ["the same 15 points", 15, 3],
    ["5 points, to what these leave open", 5, 2],
  ] as const)("finds judges' own values as clmm does, by %s", (_, points, figures) => {
    const expected = given.wine.quadrature;
    const { fit, errorOf } = fitWine(points);
    expect(fit.status).toBe("converged");
    expect(fit.logLikelihood).toBeCloseTo(expected.logLikelihood, figures);
    expected.thresholds.forEach((value, j) => expect(fit.thresholds[j]).toBeCloseTo(value, figures));
    expected.weights.forEach((value, j) => expect(fit.weights[j]).toBeCloseTo(value, figures));
    expect(fit.personSd).toBeCloseTo(expected.personSd, figures);
    expect(errorOf(4)).toBeCloseTo(expected.errors[4] ?? NaN, 3);
    expect(errorOf(5)).toBeCloseTo(expected.errors[5] ?? NaN, 3);
  });

  it("finds mirrored thresholds about a level as clmm does symmetric ones", () => {
    const answers = wine(true);
    const model = flat(6, { thresholds: "mirrored", hasPersons: true });
    const start = Float64Array.of(...toldThresholds("mirrored", [-3, -1, 1, 3]), 0, 0, 0, 0);
    const fit = fitCumulativeLogit(answers, model, { quadraturePoints: 15, start, tolerance: 1e-8 });
    const { thresholds, weights, personSd, logLikelihood } = given.wine.symmetric;
    expect(fit.logLikelihood).toBeCloseTo(logLikelihood, 3);
    const [level = NaN] = fit.weights;
    thresholds.forEach((value, j) => expect((fit.thresholds[j] ?? NaN) - level).toBeCloseTo(value, 3));
    weights.forEach((value, j) => expect(fit.weights[1 + j]).toBeCloseTo(value, 3));
    expect(fit.personSd).toBeCloseTo(personSd, 3);
  });
});
