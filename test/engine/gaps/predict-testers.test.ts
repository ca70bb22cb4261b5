import { describe, expect, it } from "vitest";
import { plantedCall } from "@/engine/calibration";
import { predictTesters, screenOutliers } from "@/engine/gaps";
import { knittedPullover } from "@/engine/simulation";

const { call } = plantedCall({
  pattern: knittedPullover(),
  design: "3 a size",
  fault: "cause",
  entryErrorShare: 0.1,
  seed: 7,
});
const [first, ...others] = call.testers;

/** The first tester's swatch was measured in inches and noted as centimetres; nobody else made such a slip. */
const slipped = {
  ...call,
  testers:
    first === undefined
      ? []
      : [
          {
            ...first,
            swatches: first.swatches.map((swatch) => ({
              ...swatch,
              acrossCm: swatch.acrossCm / 2.54,
              alongCm: swatch.alongCm / 2.54,
            })),
          },
          ...others,
        ],
};

describe("predictions of a call that has been screened", () => {
  const known = new Map(
    predictTesters(slipped).map((prediction, index) => {
      const tester = slipped.testers[index];
      if (tester === undefined) throw new Error("a prediction of nobody");
      return [tester.id, { tester, prediction }];
    }),
  );
  const screened = screenOutliers(slipped).call;
  const taken = predictTesters(screened, known);

  it("are the same whether or not some were made before", () => {
    expect(taken).toEqual(predictTesters(screened));
  });

  it("are computed again for testers with an excluded swatch, and reused for the others", () => {
    const isKnown = taken.map(
      (prediction, index) => prediction === known.get(screened.testers[index]?.id ?? "")?.prediction,
    );
    expect(isKnown[0]).toBe(false);
    expect(isKnown.slice(1).filter((same) => same).length).toBeGreaterThan(others.length / 2);
    expect(taken[0]).not.toEqual(known.get(first?.id ?? "")?.prediction);
  });
});
