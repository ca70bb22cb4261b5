import { describe, expect, it } from "vitest";
import { fitCumulativeLogit, gaussHermite, logitCovariance, type LogitModel, type ScaleAnswers } from "@/engine/fit";
import { commonPoints, logitLoss } from "../../../src/engine/fit/cumulative-logit";
import { answerChance } from "../../../src/engine/fit/answer-chance";
import { seededRandom } from "@/engine/seeded-random";

const SEED = Number(process.env.SEED);

/** Twelve people with one to three answers each, two columns. */
function someAnswers(): ScaleAnswers {
  const random = seededRandom(SEED);
  const starts = [0];
  for (let person = 0; person < 12; person += 1) starts.push((starts.at(-1) ?? 0) + 1 + random.below(3));
  const rows = starts.at(-1) ?? 0;
  return {
    steps: 5,
    answers: Int32Array.from({ length: rows }, () => random.below(5)),
    columns: { rows, columns: 2, values: Float64Array.from({ length: 2 * rows }, () => random.normal()) },
    starts: Int32Array.from(starts),
  };
}

describe("the likelihood of answers on a scale", () => {
  it("gives all answers together a chance of 1, also far from the middle", () => {
    for (const value of [-30, -3, 0, 0.7, 45]) {
      const thresholds = [-Infinity, -3, -1, 1, 3, Infinity].map((threshold) => threshold - value);
      const chances = thresholds.slice(1).map((upper, j) => answerChance(thresholds[j] ?? NaN, upper).chance);
      expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
      for (const chance of chances) expect(chance).toBeGreaterThan(0);
    }
  });

  it.each(["free", "mirrored"] as const)("has the slopes that small steps show, thresholds %s", (thresholds) => {
    const given = someAnswers();
    const count = (thresholds === "free" ? 4 : 2) + 3;
    const model: LogitModel = {
      ...{ thresholds, hasPersons: true },
      priors: Array.from({ length: count }, (_, j) => ({ mean: 0.1 * j, sd: j === 1 ? Infinity : 1.5 })),
    };
    const points = commonPoints(gaussHermite(6), given.starts.length - 1);
    const at = Float64Array.from({ length: count }, (_, j) => 0.3 - 0.1 * j);
    const { slopes } = logitLoss(given, model, points, at);
    for (let j = 0; j < count; j += 1) {
      const lossAt = (by: number) =>
        logitLoss(
          given,
          model,
          points,
          at.map((value, i) => (i === j ? value + by : value)),
        ).value;
      expect(slopes[j]).toBeCloseTo((lossAt(1e-5) - lossAt(-1e-5)) / 2e-5, 5);
    }
  });

  it("ends at the priors where nobody answers otherwise than they say, and tells how sure it is", () => {
    const given: ScaleAnswers = { ...someAnswers(), answers: new Int32Array(), starts: Int32Array.of(0) };
    const empty = { ...given, columns: { rows: 0, columns: 2, values: new Float64Array() } };
    const priors = [0.2, 0.9, 1.5, -0.5].map((mean, j) => ({ mean, sd: 0.5 + j }));
    const model: LogitModel = { thresholds: "mirrored", hasPersons: false, priors };
    const fit = fitCumulativeLogit(empty, model, { quadraturePoints: 1, start: new Float64Array(4) });
    const covariance = logitCovariance(empty, model, fit);
    priors.forEach(({ mean, sd }, j) => {
      expect(fit.point[j]).toBeCloseTo(mean, 4);
      expect(covariance?.values[j * 5]).toBeCloseTo(sd ** 2, 6);
    });
  });
});
