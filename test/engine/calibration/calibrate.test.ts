import { describe, expect, it } from "vitest";
import { calibrate, calibrateCauses, calibrateEarlier, type EarlierWay, type Fault } from "@/engine/calibration";
import { knittedPullover } from "@/engine/simulation";

const SEED = 4_711;
const CALLS = 6;

/** A short run for every change: wide bounds that a broken sum breaks. The bars are checked by `npm run calibrate`. */
describe("a short calibration", { timeout: 300_000 }, () => {
  it("covers the truth, beats the plain average and calls few sound cells off where errors are drawn from the model", () => {
    const { tally, errors } = calibrate({
      design: "2–4 a size",
      fault: "drawn",
      entryErrorShare: 0.04,
      calls: CALLS,
      seed: SEED,
    });
    expect(tally.of("covered")).toBeGreaterThan(300);
    expect(tally.share("covered")).toBeGreaterThan(0.78);
    expect(tally.share("converged")).toBe(1);
    expect(errors.rootMeanSquare("model")).toBeLessThan(0.7 * errors.rootMeanSquare("plain average"));
    expect(errors.rootMeanSquare("model")).toBeLessThan(1.35 * errors.rootMeanSquare("known variances"));
    expect(tally.share("off within 1")).toBeLessThan(0.03);
    expect(tally.share("set aside wrongly")).toBe(0);
    expect(tally.of("gross slips found")).toBeGreaterThan(10);
    expect(tally.share("gross slips found")).toBeGreaterThan(0.85);
  });

  it.each<[Fault, number]>([
    ["cause", 0.5],
    ["nothing", 0],
  ])("names causes as often as it should where the fault is %s", (fault, least) => {
    const { tally } = calibrate({ design: "3 a size", fault, entryErrorShare: 0, calls: CALLS, seed: SEED });
    if (fault === "nothing") expect(tally.share("cause named")).toBeLessThanOrEqual(1 / 3);
    else expect(tally.share("first, all calls")).toBeGreaterThanOrEqual(least);
  });

  it("names an offset first where it can be told, nearly as often as a search that is told the variances", () => {
    const found = calibrateCauses({
      patterns: [knittedPullover()],
      ...{ design: "3 a size", fault: "cause", causeKind: "offset", tellable: CALLS, seed: SEED },
    });
    expect(found.tellable).toBe(CALLS);
    expect(found.simulated).toBeGreaterThanOrEqual(CALLS);
    expect(found.namedByTold).toBeGreaterThanOrEqual(CALLS - 1);
    expect(found.named).toBeGreaterThanOrEqual(CALLS - 2);
    expect(found.namedByTold - found.named).toBe(found.onlyTold - found.onlyModel);
  });

  it("ends where a kind can never be told", () => {
    const found = calibrateCauses({
      patterns: [knittedPullover()],
      ...{ design: { each: 1 }, fault: "cause and small errors", causeKind: "stretch", tellable: 1, seed: SEED },
    });
    expect(found).toMatchObject({ tellable: 0, simulated: 1 });
  });

  it("knows a designer's fifth call better from four earlier ones, and best where it is told the spreads", () => {
    const design = "1–2 a size, two sizes empty, 30 % lost";
    const found = calibrateEarlier({ design, betweenSd: 0.15, calls: 2, seed: SEED });
    const squares = (way: EarlierWay) => found.reduce((sum, ways) => sum + ways[way].squares, 0);
    expect(squares("earlier calls")).toBeLessThan(squares("alone"));
    expect(squares("told the call’s")).toBeLessThan(squares("earlier calls"));
    expect(found.reduce((sum, ways) => sum + ways.alone.cells, 0)).toBe(9 * 8 + 7 * 7);
  });
});
