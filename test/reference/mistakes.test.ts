import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { gapSurface } from "@/engine/gaps";
import type { TesterBlock } from "@/engine/gaps/mistakes/mistakes";
import { WRONG_READING_SD, WRONG_SWATCH_SD } from "@/engine/gaps/mistakes/mistake-priors";
import { fitGapSurface, type GapFit } from "@/engine/gaps/model/fit-gap-surface";
import { gapPriors, SD_INDEX } from "@/engine/gaps/model/gap-sds";
import { MIN_READING_SD } from "@/engine/gaps/model/tester-block";
import { sizeScale } from "@/engine/pattern";
import { crochetedCardigan } from "@/engine/simulation";
import { fitVarianceComponents, surfacePosterior } from "@/engine/variance-components";
import { readJson } from "./read-json";

/** A mean over the chains, its Monte Carlo standard error, and the standard deviation of what it is the mean of. */
const sampled = z.object({ mean: z.number(), error: z.number(), sd: z.number() });
const JAGS = readJson(
  "mistakes.json",
  z.object({
    gaps: z.array(sampled),
    readings: z.array(sampled),
    across: z.array(sampled),
    along: z.array(sampled),
    wholly: z.array(sampled),
  }),
);
const DATA = dumped("mistakes-data.R");
const PATTERN = crochetedCardigan();

/** The numbers of a file in the form that R's `dump` writes and JAGS reads. */
function dumped(name: string): (key: string) => readonly number[] {
  const text = readFileSync(fileURLToPath(new URL(`data/${name}`, import.meta.url)), "utf8");
  const values = new Map(
    [...text.matchAll(/^"(\w+)" <- (?:c\()?([^)\n]*)\)?$/gm)].map(([, key = "", list = ""]) => [
      key,
      list.split(",").map(Number),
    ]),
  );
  return (key) => values.get(key) ?? [];
}

const SDS = Float64Array.from(DATA("sds"));
const SIZES = PATTERN.sizes.length;
const TESTERS = Array.from({ length: DATA("testers")[0] ?? 0 }, (_, tester) => tester);

function rowsOf(tester: number): number[] {
  return DATA("tester").flatMap((of, row) => (of === tester + 1 ? [row] : []));
}

function block(tester: number): TesterBlock {
  const rows = rowsOf(tester);
  const column = (key: string) => Float64Array.from(rows, (row) => DATA(key)[row] ?? Number.NaN);
  const hasSwatch = DATA("hasSwatch")[tester] === 1;
  const effect = (
    direction: "stitches" | "rows",
    { key, variance, sd }: { key: string; variance: string; sd: number },
  ) => ({
    ...{ fabric: "main", direction, weights: column(key), knownVariance: DATA(variance)[tester] ?? Number.NaN, sd },
  });
  return {
    values: column("y"),
    cells: Int32Array.from(rows, (row) => (DATA("measurement")[row] ?? 0) - 1),
    knownVariances: new Float64Array(rows.length).fill(MIN_READING_SD ** 2),
    residualShares: new Float64Array(rows.length).fill(1),
    effects: [
      effect("stitches", { key: "across", variance: "swatchAcross", sd: SD_INDEX.driftAcross }),
      effect("rows", { key: "along", variance: "swatchAlong", sd: SD_INDEX.driftAlong }),
    ],
    wrongReadingVariances: new Float64Array(rows.length).fill(WRONG_READING_SD ** 2),
    wrongSwatchVariances: new Float64Array(2).fill(hasSwatch ? WRONG_SWATCH_SD ** 2 : 0),
    wrongTesterVariances: column("wrongTester"),
    habits: null,
  };
}

const sizeOf = (tester: number) => (DATA("size")[rowsOf(tester)[0] ?? -1] ?? 0) - 1;

/** At the standard deviations and the shares of mistakes that JAGS was told; testers, and their readings, stand by size. */
function fitted(): GapFit {
  const groups = Array.from({ length: SIZES }, (_, size) => ({
    cells: PATTERN.measurements.length,
    blocks: TESTERS.filter((tester) => sizeOf(tester) === size).map(block),
  }));
  const readings = { groups, residualSd: SD_INDEX.residual };
  const priors = gapPriors(undefined);
  const surface = gapSurface(PATTERN, []);
  const warmStart = fitVarianceComponents({ readings, surface, start: SDS, priors, free: [] });
  const [reading = 0, swatch = 0, tester = 0] = DATA("share");
  const shares = { reading, swatch, tester };
  return fitGapSurface({ pattern: PATTERN, readings, causes: [], priors, warmStart, fittedSds: [], shares });
}

/** Within four Monte Carlo errors and what the approximation may add. */
function expectNear(found: number | undefined, { mean, error }: z.infer<typeof sampled>, more: number): void {
  expect(Math.abs((found ?? Number.NaN) - mean)).toBeLessThan(4 * error + more);
}

// The model of docs/method.md#mistakes with its three kinds of mistakes, exact but for chance, and by one normal error each.
describe("mistakes as JAGS samples them (docs/references.md#mistakes)", () => {
  const fit = fitted();
  const blocks = fit.mistakes.flat();

  it("have the same sizes on the same scale", () => {
    expect(DATA("z")).toEqual(PATTERN.sizes.map(({ id }) => sizeScale(PATTERN).get(id)));
    expect(blocks).toHaveLength(21);
  });

  it("leave the cells where they are: to a twentieth of a tolerance, and to an eighth of a standard deviation", () => {
    const cells = surfacePosterior(fit.solution).groups.flatMap(({ mean, covariance }) =>
      Array.from(mean, (value, cell) => ({ value, sd: Math.sqrt(covariance[cell * mean.length + cell] ?? 0) })),
    );
    expect(cells).toHaveLength(JAGS.gaps.length);
    JAGS.gaps.forEach((expected, cell) => {
      expectNear(cells[cell]?.value, expected, Math.min(0.05, 0.125 * expected.sd));
      const ratio = (cells[cell]?.sd ?? 0) / expected.sd;
      expect(ratio).toBeGreaterThan(0.79);
      expect(ratio).toBeLessThan(1.02);
    });
  });

  it("have the same chances: readings to 0.1, swatches and whole testers to 0.05", () => {
    JAGS.readings.forEach((expected, row) =>
      expectNear(blocks.flatMap(({ readings }) => [...readings])[row], expected, 0.1),
    );
    JAGS.wholly.forEach((expected, tester) => expectNear(blocks[tester]?.tester, expected, 0.05));
    JAGS.across.forEach((expected, tester) => expectNear(blocks[tester]?.swatches[0], expected, 0.05));
    JAGS.along.forEach((expected, tester) => expectNear(blocks[tester]?.swatches[1], expected, 0.05));
  });

  it("are named alike: every chance above a half there is above a half here, and no other", () => {
    const sides = (chances: readonly number[]) => chances.map((chance) => chance > 0.5);
    const means = (of: readonly z.infer<typeof sampled>[]) => of.map(({ mean }) => mean);
    expect(sides(blocks.flatMap(({ readings }) => [...readings]))).toEqual(sides(means(JAGS.readings)));
    expect(sides(blocks.map(({ tester }) => tester))).toEqual(sides(means(JAGS.wholly)));
    expect(sides(blocks.map(({ swatches }) => swatches[0] ?? 0))).toEqual(sides(means(JAGS.across)));
    expect(sides(blocks.map(({ swatches }) => swatches[1] ?? 0))).toEqual(sides(means(JAGS.along)));
  });
});
