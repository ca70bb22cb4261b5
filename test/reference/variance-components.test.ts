import { describe, expect, it } from "vitest";
import {
  cellRows,
  fitVarianceComponents,
  surfacePosterior,
  type Block,
  type Group,
  type SdPrior,
  type Surface,
} from "@/engine/variance-components";
import { numbersOf, readCsv } from "./read-csv";

const FREE: SdPrior = { kind: "none" };

interface Row {
  readonly value: number;
  readonly cell: number;
}

function block(rows: readonly Row[], { sd, known = 0 }: { sd: number | null; known?: number }): Block {
  return {
    values: Float64Array.from(rows, ({ value }) => value),
    cells: Int32Array.from(rows, ({ cell }) => cell),
    knownVariances: new Float64Array(rows.length).fill(known),
    residualShares: new Float64Array(rows.length).fill(1),
    effects: sd === null ? [] : [{ weights: new Float64Array(rows.length).fill(1), knownVariance: 0, sd }],
  };
}

function byKey(rows: readonly Record<string, string>[], key: string): Map<string, Record<string, string>[]> {
  const groups = new Map<string, Record<string, string>[]>();
  for (const row of rows) groups.set(row[key] ?? "", [...(groups.get(row[key] ?? "") ?? []), row]);
  return groups;
}

/** One mean, batches as blocks. */
function oneWay(file: string) {
  const batches = [...byKey(readCsv(file), "Batch").values()];
  const blocks = batches.map((rows) =>
    block(
      numbersOf(rows, "Yield").map((value) => ({ value, cell: 0 })),
      { sd: 0 },
    ),
  );
  const surface: Surface = {
    columns: [{ kind: "fixed" }],
    rows: [cellRows([[{ column: 0, weight: 1 }]])],
    cellSd: null,
  };
  const readings = { groups: [{ cells: 1, blocks }], residualSd: 1 };
  const fit = fitVarianceComponents({ readings, surface, start: Float64Array.of(30, 30), priors: [FREE, FREE] });
  const mean = fit.solution.shared[0];
  const standardError = Math.sqrt(surfacePosterior(fit.solution).sharedVariances[0] ?? Number.NaN);
  return { fit, mean, standardError, criterion: -2 * fit.solution.logLikelihood };
}

// Data and values: lme4 1.1-31 in R 4.2.2 (docs/references.md#variance-components); Dyestuff's variances in closed form there:
// MSB 11271.5, MSW 2451.25 of 5 a batch (Davies & Goldsmith 1972).
describe("REML as lme4 does it", () => {
  it("finds Dyestuff's variances, mean, standard error and criterion", () => {
    const { fit, mean, standardError, criterion } = oneWay("dyestuff.csv");
    expect(fit.status).toBe("converged");
    expect((fit.sds[0] ?? 0) ** 2).toBeCloseTo(1764.05, 2);
    expect((fit.sds[1] ?? 0) ** 2).toBeCloseTo(2451.25, 2);
    expect(mean).toBeCloseTo(1527.5, 8);
    expect(standardError).toBeCloseTo(19.38341194, 5);
    expect(criterion).toBeCloseTo(319.6542768, 6);
  });

  it("gives Dyestuff2's batches no variance at all", () => {
    const { fit, mean, standardError, criterion } = oneWay("dyestuff2.csv");
    expect(fit.status).toBe("converged");
    expect(fit.sds[0]).toBe(0);
    expect((fit.sds[1] ?? 0) ** 2).toBeCloseTo(13.80630963, 4);
    expect(mean).toBeCloseTo(5.6656, 8);
    expect(standardError).toBeCloseTo(0.6783880312, 5);
    expect(criterion).toBeCloseTo(161.8282778, 6);
  });

  it("parts Penicillin's plates, samples and rest, which cross, and predicts the samples", () => {
    const rows = readCsv("penicillin.csv");
    const samples = [...byKey(rows, "sample").keys()].toSorted();
    const blocks = [...byKey(rows, "plate").values()].map((plate) =>
      block(
        plate.map((row) => ({ value: Number(row.diameter), cell: samples.indexOf(row.sample ?? "") })),
        { sd: 0 },
      ),
    );
    const surface: Surface = {
      columns: [{ kind: "fixed" }],
      rows: [cellRows(samples.map(() => [{ column: 0, weight: 1 }]))],
      cellSd: 2,
    };
    const readings = { groups: [{ cells: samples.length, blocks }], residualSd: 1 };
    const fit = fitVarianceComponents({
      readings,
      surface,
      start: Float64Array.of(1, 1, 1),
      priors: [FREE, FREE, FREE],
    });
    const variances = [...fit.sds].map((sd) => sd ** 2);
    expect(variances[0]).toBeCloseTo(0.7169081768, 5);
    expect(variances[1]).toBeCloseTo(0.3024154627, 6);
    expect(variances[2]).toBeCloseTo(3.730917588, 4);
    expect(fit.solution.shared[0]).toBeCloseTo(22.97222222, 7);
    expect(-2 * fit.solution.logLikelihood).toBeCloseTo(330.860589, 6);
    const means = [...(surfacePosterior(fit.solution).groups[0]?.mean ?? [])].map((mean) => mean - 22.9722222222);
    const published = [2.187057967, -1.010476149, 1.937899464, -0.09689497321, -0.01384213903, -3.00374417];
    means.forEach((mean, index) => expect(mean).toBeCloseTo(published[index] ?? Number.NaN, 5));
  });
});

// Data: Colditz et al. 1994 as metafor's dat.bcg; values: metafor 3.8-1 (docs/references.md#variance-components).
describe("known variances, as metafor fits the BCG trials by REML", () => {
  const trials = readCsv("bcg.csv");

  function fitTrials(columns: readonly ("one" | "ablat")[], between: "cell" | "block") {
    const groups: Group[] = trials.map((trial) => ({
      cells: 1,
      blocks: [
        block([{ value: Number(trial.yi), cell: 0 }], { sd: between === "block" ? 0 : null, known: Number(trial.vi) }),
      ],
    }));
    const surface: Surface = {
      columns: columns.map(() => ({ kind: "fixed" })),
      rows: trials.map((trial) =>
        cellRows([
          columns.map((column, index) => ({ column: index, weight: column === "one" ? 1 : Number(trial.ablat) })),
        ]),
      ),
      cellSd: between === "cell" ? 0 : null,
    };
    return fitVarianceComponents({
      readings: { groups, residualSd: null },
      surface,
      start: Float64Array.of(0.5),
      priors: [FREE],
    });
  }

  it.each(["cell", "block"] as const)(
    "finds tau2, mean and standard error with the trials' variance by %s",
    (between) => {
      const fit = fitTrials(["one"], between);
      expect((fit.sds[0] ?? 0) ** 2).toBeCloseTo(0.3132432581, 6);
      expect(fit.solution.shared[0]).toBeCloseTo(-0.7145323422, 6);
      expect(Math.sqrt(surfacePosterior(fit.solution).sharedVariances[0] ?? 0)).toBeCloseTo(0.1797815161, 6);
    },
  );

  it("predicts each trial's own effect with its standard error", () => {
    const { groups } = surfacePosterior(fitTrials(["one"], "cell").solution);
    const published: readonly (readonly [number, number])[] = [
      [-0.800233562, 0.4099304475],
      [-1.25170598, 0.3532273016],
      [-0.9869030934, 0.4348315764],
      [-1.397897696, 0.1375684157],
    ];
    published.forEach(([mean, standardError], trial) => {
      expect(groups[trial]?.mean[0]).toBeCloseTo(mean, 5);
      expect(Math.sqrt(groups[trial]?.covariance[0] ?? 0)).toBeCloseTo(standardError, 5);
    });
  });

  it("regresses on latitude", () => {
    const fit = fitTrials(["one", "ablat"], "cell");
    expect((fit.sds[0] ?? 0) ** 2).toBeCloseTo(0.07634796396, 6);
    expect(fit.solution.shared[0]).toBeCloseTo(0.25146821, 5);
    expect(fit.solution.shared[1]).toBeCloseTo(-0.02910172501, 6);
    expect(Math.sqrt(surfacePosterior(fit.solution).sharedVariances[1] ?? 0)).toBeCloseTo(0.007195327221, 6);
  });
});
