import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { normalChance, normalQuantile, studentTChance, studentTQuantile } from "@/engine/distributions";

const number = z.number();
const tableSchema = z.object({
  t: z.array(z.object({ probability: number, degreesOfFreedom: number, quantile: number })).min(1),
  normal: z.array(z.object({ probability: number, quantile: number })).min(1),
  chances: z.array(z.object({ value: number, normal: number, t5: number })).min(1),
});

const reference = tableSchema.parse(JSON.parse(readFileSync("test/reference/data/quantiles.json", "utf8")));

function expectSame(actual: number, expected: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-11 * Math.max(1e-12, Math.abs(expected)) + 1e-15);
}

describe("quantiles and chances against R (test/reference/data/quantiles.R)", () => {
  it.each(reference.t)("t quantile of $probability at $degreesOfFreedom degrees of freedom", (row) => {
    expectSame(studentTQuantile(row.probability, row.degreesOfFreedom), row.quantile);
  });

  it.each(reference.normal)("normal quantile of $probability", ({ probability, quantile }) => {
    expectSame(normalQuantile(probability), quantile);
  });

  it.each(reference.chances)("chances below $value", ({ value, normal, t5 }) => {
    expectSame(normalChance(value), normal);
    expectSame(studentTChance(value, 5), t5);
  });

  it("agrees with 40-digit values rounded to double (mpmath, docs/references.md#quantiles)", () => {
    expectSame(studentTQuantile(0.975, 8), 2.3060041352041662);
    expectSame(studentTQuantile(0.975, 120), 1.9799304050824404);
    expectSame(normalQuantile(0.975), 1.9599639845400538);
  });
});
