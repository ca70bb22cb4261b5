import { describe, expect, it } from "vitest";
import { plantedCall } from "@/engine/calibration";
import { gaps, screenOutliers } from "@/engine/gaps";
import { crochetedCardigan, knittedPullover } from "@/engine/simulation";
import { yarnNeeds } from "@/engine/yarn";

describe("yarn by size", { timeout: 120_000 }, () => {
  const { call } = plantedCall({
    pattern: knittedPullover(),
    design: "3 a size",
    fault: "nothing",
    entryErrorShare: 0,
    seed: 5,
  });

  it("finds the ratio that the testers' yarn was simulated by, which is that of plain knit (Munden 1959, from memory: 4.4 to 4.8)", () => {
    const [main] = yarnNeeds(call).yarns;
    expect(main?.ratio).toBeGreaterThan(4.4);
    expect(main?.ratio).toBeLessThan(4.8);
    expect(Math.abs((main?.ratio ?? 0) - 4.6)).toBeLessThan(4 * (main?.standardError ?? 0));
    for (const { ratio } of main?.fabrics ?? []) expect(ratio).toBeGreaterThan(0);
  });

  it("says more metres for each larger size, tested or not, and nine in ten makers enough", () => {
    const untested = { ...call, testers: call.testers.filter(({ size }) => size !== "x5") };
    const sizes = yarnNeeds(untested).yarns[0]?.sizes ?? [];
    expect(sizes).toHaveLength(9);
    expect(sizes.at(-1)?.reports).toBe(0);
    sizes.forEach(({ expectedMetres, upperMetres, publishMetres, balls }, index) => {
      expect(expectedMetres ?? 0).toBeGreaterThan(sizes[index - 1]?.expectedMetres ?? 0);
      expect(upperMetres ?? 0).toBeGreaterThan(expectedMetres ?? 0);
      expect((publishMetres ?? 1) % 10).toBe(0);
      expect(publishMetres ?? 0).toBeGreaterThanOrEqual(upperMetres ?? 0);
      expect((balls ?? 0) * 200).toBeGreaterThanOrEqual(upperMetres ?? 0);
    });
  });

  it("says nothing where nobody weighed", () => {
    const none = { ...call, testers: call.testers.map((tester) => ({ ...tester, yarn: [] })) };
    expect(yarnNeeds(none).yarns[0]).toMatchObject({ ratio: null, standardError: null, fabrics: [] });
    expect(yarnNeeds(none).yarns[0]?.sizes[0]).toMatchObject({
      expectedMetres: null,
      upperMetres: null,
      balls: null,
      reports: 0,
    });
  });

  it("sets ounces typed as grams aside, and keeps them by a person's decision", () => {
    const cardigan = plantedCall({
      pattern: crochetedCardigan(),
      design: "3 a size",
      fault: "nothing",
      entryErrorShare: 0,
      seed: 9,
    }).call;
    const ounces = (decision?: "keep") => ({
      ...cardigan,
      testers: cardigan.testers.map((tester, index) =>
        index === 4
          ? { ...tester, yarn: tester.yarn.map((used) => ({ ...used, grams: used.grams / 28.349523125, decision })) }
          : tester,
      ),
    });
    const suspect = gaps(ounces()).suspects.find(({ what }) => what === "yarn");
    expect(suspect).toMatchObject({ id: "main", slip: "ounces-as-grams", setAside: true });
    expect(suspect?.wouldBe).toBeCloseTo(cardigan.testers[4]?.yarn[0]?.grams ?? Number.NaN, 6);
    expect(yarnNeeds(screenOutliers(ounces()).call).yarns[0]?.ratio).toBeCloseTo(
      yarnNeeds({ ...cardigan, testers: cardigan.testers.filter((_, index) => index !== 4) }).yarns[0]?.ratio ?? 0,
      9,
    );
    expect(gaps(ounces("keep")).suspects.find(({ what }) => what === "yarn")).toMatchObject({ setAside: false });
  });
});
