import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plantedCall, type PlantedSpreads } from "@/engine/calibration";
import {
  estimateGaps,
  estimateInputs,
  gaps,
  learnFromCalls,
  priorFromCalls,
  type ShownSpread,
  type ShownSpreads,
} from "@/engine/gaps";
import { parseCall, type CallDocument, type CallPrior } from "@/engine/pattern";
import { crochetedCardigan } from "@/engine/simulation";
import { callDocument, reader } from "../../factories/call";

const SPREADS = ["offset", "step", "cell", "driftAcross", "driftAlong", "residual"] as const;
const BETWEEN = 0.2 ** 2;

function drawn(seed: number, spreads?: PlantedSpreads): CallDocument {
  const design = "1–2 a size, two sizes empty, 30 % lost" as const;
  return plantedCall({ pattern: crochetedCardigan(), design, fault: "drawn", entryErrorShare: 0, spreads, seed }).call;
}

/** A call that shows the same of every spread. */
function shows(spread: ShownSpread): ShownSpreads {
  return { offset: spread, step: spread, cell: spread, driftAcross: spread, driftAlong: spread, residual: spread };
}

function offsetOf(shown: readonly ShownSpread[]): CallPrior["sds"]["offset"] {
  const prior = priorFromCalls(shown.map(shows));
  if (prior === null) throw new Error("the calls say something");
  return prior.sds.offset;
}

function told(logSd: number, weight: number): CallPrior {
  return { calls: 1, sds: sdsOf({ logSd, weight }) };
}

function sdsOf(spread: CallPrior["sds"]["offset"]): CallPrior["sds"] {
  return { offset: spread, step: spread, cell: spread, driftAcross: spread, driftAlong: spread, residual: spread };
}

/** Mean and precision of x given yᵢ ~ N(x, V) with a flat prior, V = τ² in every entry and τ² + 1/pᵢ more on the diagonal. */
function generalisedLeastSquares(shown: readonly ShownSpread[]): { mean: number; precision: number } {
  const rows = shown.map(({ logSd, information }, i) => [
    ...shown.map((_, j) => BETWEEN + (i === j ? BETWEEN + 1 / information : 0)),
    logSd,
    1,
  ]);
  const count = rows.length;
  // Gauss–Jordan: V⁻¹y and V⁻¹1 in the last two columns.
  rows.forEach((pivotRow, p) => {
    const pivot = pivotRow[p] ?? Number.NaN;
    pivotRow.forEach((value, j) => (pivotRow[j] = value / pivot));
    rows.forEach((row, i) => {
      const factor = row[p] ?? Number.NaN;
      if (i !== p) row.forEach((value, j) => (row[j] = value - factor * (pivotRow[j] ?? Number.NaN)));
    });
  });
  const sumOf = (column: number) => rows.reduce((sum, row) => sum + (row[column] ?? Number.NaN), 0);
  const precision = sumOf(count + 1);
  return { mean: sumOf(count) / precision, precision };
}

const spread = fc.record({
  logSd: fc.double({ min: -6, max: 2, noNaN: true }),
  information: fc.double({ min: 0.25, max: 300, noNaN: true }),
});

describe("priorFromCalls", () => {
  it("weighs two calls by their information and the spread between calls", () => {
    // By hand: 1 ÷ (0.04 + 1/4) = 3.448276 and 1 ÷ (0.04 + 1/16) = 9.756098; the mean is (−3.448276 − 2 · 9.756098) ÷ 13.204374,
    // the weight 1 ÷ (0.04 + 1 ÷ 13.204374).
    const found = offsetOf([
      { logSd: -1, information: 4 },
      { logSd: -2, information: 16 },
    ]);
    expect(found.logSd).toBeCloseTo(-1.738854, 6);
    expect(found.weight).toBeCloseTo(8.640616, 6);
  });

  it("is what generalised least squares makes of all calls together", () => {
    let ran = 0;
    fc.assert(
      fc.property(fc.array(spread, { minLength: 1, maxLength: 6 }), (shown) => {
        const found = offsetOf(shown);
        const { mean, precision } = generalisedLeastSquares(shown);
        expect(found.logSd).toBeCloseTo(mean, 8);
        expect(found.weight / precision).toBeCloseTo(1, 8);
        ran += 1;
      }),
    );
    expect(ran).toBe(100);
  });

  it("moves to a call with its information, and never weighs more than the spread between calls allows", () => {
    fc.assert(
      fc.property(spread, spread, fc.double({ min: 1.1, max: 50, noNaN: true }), (one, other, factor) => {
        const more = { ...other, information: other.information * factor };
        const [before, after] = [offsetOf([one, other]), offsetOf([one, more])];
        expect(Math.abs(after.logSd - other.logSd)).toBeLessThanOrEqual(Math.abs(before.logSd - other.logSd) + 1e-12);
        expect(after.weight).toBeGreaterThan(before.weight);
        expect(offsetOf(Array.from({ length: 1000 }, () => more)).weight).toBeLessThan(1 / BETWEEN);
      }),
    );
  });

  it("is nothing without a call, and takes no notice of one that says nothing, nor of their order", () => {
    const wild = shows({ logSd: 3, information: 0 });
    const [one, other] = [shows({ logSd: -1, information: 4 }), shows({ logSd: -2, information: 16 })];
    expect(priorFromCalls([])).toBeNull();
    expect(priorFromCalls([wild])).toBeNull();
    expect(priorFromCalls([one, wild, other])).toEqual(priorFromCalls([other, one]));
  });
});

describe("learnFromCalls", { timeout: 60_000 }, () => {
  it("takes the usual priors out: with them, what a call showed is likeliest where its own fit is", () => {
    const call = drawn(11);
    const learned = learnFromCalls([call])?.sds;
    const { variances } = estimateGaps(call, { causes: false });
    // By hand: the slopes of the log densities in docs/method.md#priors.
    const drift = logNormal(0.022);
    const pattern = { offset: halfNormal(0.8), step: halfNormal(0.5), cell: halfNormal(0.4) };
    const slopes = { ...pattern, driftAcross: drift, driftAlong: drift, residual: logNormal(0.5) };
    for (const key of SPREADS) {
      const sd = Math.sqrt(variances[key] ?? Number.NaN);
      const { logSd, weight } = learned?.[key] ?? { logSd: Number.NaN, weight: Number.NaN };
      // Of one call alone the weight is 1 ÷ (2 · between² + 1/p), by hand.
      const information = 1 / (1 / weight - 2 * BETWEEN);
      expect(information).toBeGreaterThan(0);
      expect(slopes[key](sd) - information * (Math.log(sd) - logSd), key).toBeCloseTo(0, 6);
    }
  });

  it("learns more from a call with more testers, and nothing from one without a reading that counts", () => {
    const call = drawn(11);
    const twice = [...call.testers, ...call.testers.map((tester) => ({ ...tester, id: `${tester.id}-again` }))];
    const [one, two] = [learnFromCalls([call]), learnFromCalls([{ ...call, testers: twice }])];
    expect(two?.sds.driftAcross.weight).toBeGreaterThan(one?.sds.driftAcross.weight ?? Number.NaN);
    const empty = callDocument([reader("t1", {})]);
    expect(learnFromCalls([empty])).toBeNull();
    expect(learnFromCalls([empty, call])).toEqual(one);
  });

  it("learns next to nothing of what one reading cannot show", () => {
    const learned = learnFromCalls([callDocument([reader("t1", { bust: 101 })])]);
    expect(learned?.sds.step.weight).toBeLessThan(1);
    expect(learned?.sds.driftAlong.weight).toBe(0);
  });

  it("learns the same from the same calls in another order, and comes near to the spreads that they were drawn with", () => {
    const spreads = { patternSds: { offset: 0.6, step: 0.3, cell: 0.25 }, driftSd: 0.03, readingSd: 0.4 };
    const calls = [21, 22, 23, 24].map((seed) => drawn(seed, spreads));
    const learned = learnFromCalls(calls);
    expect(learnFromCalls(calls.toReversed())).toEqual(learned);
    const { patternSds, driftSd, readingSd } = spreads;
    const truth = { ...patternSds, driftAcross: driftSd, driftAlong: driftSd, residual: readingSd };
    for (const key of SPREADS) {
      const { logSd, weight } = learned?.sds[key] ?? { logSd: Number.NaN, weight: Number.NaN };
      expect(Math.abs(logSd - Math.log(truth[key])) * Math.sqrt(weight), key).toBeLessThan(3);
    }
  });
});

function halfNormal(scale: number) {
  return (sd: number) => 1 - (sd / scale) ** 2;
}

function logNormal(median: number) {
  return (sd: number) => -Math.log(sd / median) / 0.5 ** 2;
}

describe("gaps with a prior", { timeout: 60_000 }, () => {
  it("is to the last bit what it is without, where nothing was learned", () => {
    const call = drawn(12);
    expect(gaps({ ...call, prior: told(-1, 0) })).toEqual(gaps(call));
  });

  it("draws every spread to what earlier calls showed, the more the more they weigh", () => {
    const call = drawn(12);
    // Far above every spread of this call, so that each has to move the same way.
    const logSd = 1;
    const distances = [0, 1, 4, 100].map((weight) => {
      const { variances } = estimateGaps({ ...call, prior: told(logSd, weight) }, { causes: false });
      return SPREADS.map((key) => logSd - Math.log(variances[key] ?? Number.NaN) / 2);
    });
    SPREADS.forEach((key, index) => {
      const found = distances.map((distance) => distance[index] ?? Number.NaN);
      expect(found, key).toEqual(found.toSorted((left, right) => right - left));
      expect(found[0], key).toBeGreaterThan(1);
      expect(found[3], key).toBeLessThan(1);
    });
  });
});

describe("causes beside a prior", { timeout: 60_000 }, () => {
  it("are named, and estimated, as without it", () => {
    const planted = { design: "3 a size", fault: "cause", entryErrorShare: 0, seed: 31 } as const;
    const { call } = plantedCall({ ...planted, pattern: crochetedCardigan() });
    const [alone, small] = [gaps(call), gaps({ ...call, prior: told(-3, 20) })];
    expect(alone.causes.length).toBeGreaterThan(0);
    expect(small.cells).not.toEqual(alone.cells);
    // What a cause explains is told of the cells, which do start from the prior.
    const bare = (causes: typeof alone.causes) => causes.map(({ explains: _explains, ...cause }) => cause);
    expect(bare(small.causes)).toEqual(bare(alone.causes));
    expect(estimateInputs({ ...call, prior: told(-3, 20) }, alone.causes)).toEqual(estimateInputs(call, alone.causes));
  });
});

describe("a call document with a prior", () => {
  const call = callDocument([]);
  const prior = told(-1, 4);

  it("is call@2, and has a weight of at least 0 for every spread", () => {
    expect(parseCall({ ...call, format: "sizewright/call@2", prior }).ok).toBe(true);
    expect(parseCall({ ...call, prior })).toMatchObject({ ok: false, faults: [{ path: "prior" }] });
    const { offset: _offset, ...sds } = prior.sds;
    const faulty = [{ ...prior, sds }, told(-1, -1), told(9, 1), { ...prior, calls: 0 }, { ...prior, testers: {} }];
    for (const wrong of faulty)
      expect(parseCall({ ...call, format: "sizewright/call@2", prior: wrong }).ok).toBe(false);
  });
});
