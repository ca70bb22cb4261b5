import { describe, expect, it } from "vitest";
import { leastSquares } from "@/engine/linear-algebra";
import { numbersOf, readCsv } from "./read-csv";

function fitted(rows: readonly (readonly number[])[], values: readonly number[]) {
  const fit = leastSquares(rows, values);
  if (fit === null) throw new Error("no fit");
  const variance = fit.residualSumOfSquares / (values.length - fit.coefficients.length);
  const size = fit.coefficients.length;
  const sds = [...fit.coefficients].map((_, i) =>
    Math.sqrt(variance * (fit.unscaledCovariance[i * size + i] ?? Number.NaN)),
  );
  return { coefficients: [...fit.coefficients], sds, residualSd: Math.sqrt(variance) };
}

function expectDigits(actual: number | undefined, certified: number, digits: number): void {
  expect(Math.abs((actual ?? Number.NaN) / certified - 1)).toBeLessThan(10 ** -digits);
}

// NIST StRD linear regression, certified values (docs/references.md#least-squares).
describe("least squares against NIST's certified values", () => {
  it.each([
    ["NoInt1", 2.07438016528926, 0.0165289256198347, 3.56753034006338],
    ["NoInt2", 0.727272727272727, 0.0420827318078432, 0.369274472937998],
  ])("%s, a line through the origin", (dataset, slope, sd, residualSd) => {
    const rows = readCsv("nist_noint.csv").filter((row) => row.dataset === dataset);
    const fit = fitted(
      numbersOf(rows, "x").map((x) => [x]),
      numbersOf(rows, "y"),
    );
    expectDigits(fit.coefficients[0], slope, 13);
    expectDigits(fit.sds[0], sd, 12);
    expectDigits(fit.residualSd, residualSd, 12);
  });

  it("Norris, a line", () => {
    const rows = readCsv("nist_norris.csv");
    const fit = fitted(
      numbersOf(rows, "x").map((x) => [1, x]),
      numbersOf(rows, "y"),
    );
    expectDigits(fit.coefficients[0], -0.262323073774029, 10);
    expectDigits(fit.coefficients[1], 1.00211681802045, 12);
    expectDigits(fit.sds[0], 0.232818234301152, 10);
    expectDigits(fit.sds[1], 0.000429796848199937, 10);
    expectDigits(fit.residualSd, 0.884796396144373, 10);
  });

  it("reports linearly dependent columns", () => {
    expect(
      leastSquares(
        [
          [1, 2],
          [2, 4],
          [3, 6],
        ],
        [1, 2, 3],
      ),
    ).toBeNull();
  });
});
