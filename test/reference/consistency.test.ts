import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import {
  algorithmA,
  mandelH,
  mandelHLimit,
  mandelK,
  mandelKLimit,
  mean,
  precisionOf,
  standardDeviation,
} from "@/engine/consistency";
import { readCsv } from "./read-csv";

function groupsOf(rows: readonly Record<string, string>[], { by, value }: { by: string; value: string }): number[][] {
  const groups = new Map<string, number[]>();
  for (const row of rows) groups.set(row[by] ?? "", [...(groups.get(row[by] ?? "") ?? []), Number(row[value])]);
  return [...groups.values()];
}

function estimated(groups: readonly (readonly number[])[]) {
  const precision = precisionOf(groups);
  if (precision.status !== "estimated") throw new Error(precision.status);
  return precision;
}

// ISO 5725-2:1994, B.1 and B.3: data from memory, published values from memory (docs/references.md#consistency-of-testers); R gives
// the longer ones.
describe("repeatability, reproducibility, h and k against ISO 5725-2's worked examples", () => {
  const coal = readCsv("iso5725_2_coal_sulfur.csv");

  it.each([
    ["1", 0.6903703704, 0.0151165066, 0.02636379207],
    ["2", 1.252307692, 0.028779172, 0.06060577748],
    ["3", 1.667407407, 0.01707825128, 0.0347675169],
    ["4", 3.24962963, 0.02607680962, 0.05821693359],
  ])("sulfur in coal, level %s, with unequal numbers of readings", (level, m, repeatability, reproducibility) => {
    const precision = estimated(
      groupsOf(
        coal.filter((row) => row.level === level),
        { by: "lab", value: "value" },
      ),
    );
    expect(precision.mean).toBeCloseTo(m, 8);
    expect(precision.repeatabilitySd).toBeCloseTo(repeatability, 9);
    expect(precision.reproducibilitySd).toBeCloseTo(reproducibility, 9);
  });

  it.each([
    ["1", 0.09216154296, 0.1707546276],
    ["2", 0.1789029066, 0.4976830245],
    ["3", 0.1269104015, 0.4003870895],
    ["4", 0.3367955611, 0.5785951274],
    ["5", 0.3934735424, 0.6369598552],
  ])(
    "creosote oil, level %s, without the laboratories that the standard leaves out",
    (level, repeatability, reproducibility) => {
      const rows = readCsv("iso5725_2_creosote.csv").filter(
        (row) => row.level === level && row.excluded_in_published_result === "no",
      );
      const precision = estimated(groupsOf(rows, { by: "lab", value: "value" }));
      expect(precision.repeatabilitySd).toBeCloseTo(repeatability, 9);
      expect(precision.reproducibilitySd).toBeCloseTo(reproducibility, 9);
    },
  );

  it("finds h and k of sulfur in coal, level 1", () => {
    const groups = groupsOf(
      coal.filter((row) => row.level === "1"),
      { by: "lab", value: "value" },
    );
    const h = [0.7375, -0.4011, -0.9532, -1.2292, 0.0129, 1.8071, 0.565, -0.5391];
    const k = [0.3326, 0.6651, 1.3846, 0.6651, 1.2443, 0.384, 0.768, 1.6739];
    mandelH(groups.map(mean)).forEach((value, lab) => expect(value).toBeCloseTo(h[lab] ?? Number.NaN, 4));
    mandelK(groups.map(standardDeviation)).forEach((value, lab) => expect(value).toBeCloseTo(k[lab] ?? Number.NaN, 4));
  });

  // Closed form by R, the same distribution as metRology's qmandelh and qmandelk (docs/references.md#consistency-of-testers).
  it.each([
    [3, 1.1546, 1.1511, 1.7147, 1.6454],
    [8, 2.0649, 1.7491, 2.2562, 1.8848],
    [16, 2.3347, 1.8649, 2.422, 1.9286],
  ])("limits of h and of k of two readings for %i testers", (testers, h1, h5, k1, k5) => {
    expect(mandelHLimit(testers, 0.01)).toBeCloseTo(h1, 4);
    expect(mandelHLimit(testers, 0.05)).toBeCloseTo(h5, 4);
    expect(mandelKLimit(testers, 2, 0.01)).toBeCloseTo(k1, 4);
    expect(mandelKLimit(testers, 2, 0.05)).toBeCloseTo(k5, 4);
  });

  it("says nothing below three testers, and nothing where nobody differs", () => {
    expect(mandelH([1, 2])).toEqual([null, null]);
    expect(mandelK([1, 2])).toEqual([null, null]);
    expect(mandelH([1, 1, 1])).toEqual([null, null, null]);
    expect(mandelK([0, 0, 0])).toEqual([null, null, null]);
  });
});

// ASTM E691, serum glucose: data as the R package ILS has them, published values from memory to four places
// (docs/references.md#consistency-of-testers). Material C with the two entries that must be changed; B does not reproduce.
describe("repeatability and reproducibility against ASTM E691's worked example", () => {
  it.each([
    ["A", 41.5183, 0.6061, 1.0632, 1.0632],
    ["C", 134.7264, 1.7397, 1.5434, 2.1482],
    ["D", 194.717, 2.595, 2.6251, 3.3657],
    ["E", 294.492, 2.6931, 3.935, 4.1923],
  ])("serum glucose, material %s, three readings", (material, m, ofMeans, repeatability, reproducibility) => {
    const rows = readCsv("astm_e691_glucose.csv").filter((row) => row.material === material);
    const groups = groupsOf(rows, { by: "lab", value: "value_corrected" });
    const precision = estimated(groups);
    expect(groups.map(({ length }) => length)).toEqual([3, 3, 3, 3, 3, 3, 3, 3]);
    // The mean of C as recalled differs in the last place from that of its corrected data.
    expect(Math.abs(precision.mean - m)).toBeLessThan(3e-4);
    expect(standardDeviation(groups.map(mean))).toBeCloseTo(ofMeans, 4);
    expect(precision.repeatabilitySd).toBeCloseTo(repeatability, 4);
    expect(precision.reproducibilitySd).toBeCloseTo(reproducibility, 4);
  });

  it("has its limits at ½ %, for eight testers and three readings", () => {
    expect(mandelHLimit(8, 0.005)).toBeCloseTo(2.1525, 4);
    expect(mandelKLimit(8, 3, 0.005)).toBeCloseTo(2.0608, 4);
  });
});

// NIST StRD, one-way analyses of variance (docs/references.md#consistency-of-testers). A reproducibility variance is
// within + (between − within) ÷ group size where groups are equal.
describe("one-way variances against NIST's certified values", () => {
  it.each([
    ["nist_sirstv.csv", 1.27865654e-2, 1.0831828e-2, 5, 12],
    ["nist_atmwtag.csv", 3.638341875e-9, 1.04951729166667e-8 / 46, 24, 7],
  ])("%s", (file, between, within, size, digits) => {
    const precision = estimated(groupsOf(readCsv(file), { by: "group", value: "value" }));
    expect(precision.repeatabilitySd ** 2 / within).toBeCloseTo(1, digits);
    expect(precision.reproducibilitySd ** 2 / (within + (between - within) / size)).toBeCloseTo(1, digits);
  });
});

// ISO 13528:2015, C.3.1; values of the factor 1.134 run to convergence in R (docs/references.md#robust-mean-and-spread).
describe("Algorithm A", () => {
  const lists = z
    .record(z.string(), z.object({ x: z.array(z.number()) }))
    .parse(JSON.parse(readFileSync("test/reference/data/robust_examples.json", "utf8")));

  it.each([
    ["iso5725_5_creosote_level5_cell_means", 20.41214286, 1.069839703],
    ["amc_brief_6", 5.38648923, 1.14595692],
    ["mass_chem", 3.205565923, 0.6741501],
    ["mass_abbey", 11.73264076, 5.263550078],
  ])("%s", (name, robustMean, robustSd) => {
    const summary = algorithmA(lists[name]?.x ?? []);
    expect(summary.status).toBe("converged");
    expect(summary.mean).toBeCloseTo(robustMean, 7);
    expect(summary.sd).toBeCloseTo(robustSd, 7);
  });

  it("starts where more than half the values are equal, and knows no spread of one", () => {
    expect(algorithmA([14, 14, 14, 15]).sd).toBeGreaterThan(0);
    expect(algorithmA([14])).toEqual({ mean: 14, sd: 0, status: "converged" });
    expect(algorithmA([14, 14, 14])).toEqual({ mean: 14, sd: 0, status: "converged" });
  });
});
