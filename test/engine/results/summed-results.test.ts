import { describe, expect, it } from "vitest";
import { analyseCall } from "@/engine/results";
import { callDocument } from "../../factories/call";
import { patternDocument, swatch, tester } from "../../factories/pattern";

const WOOL = { id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 };

describe("what pages tell of all testers, however many they show", { timeout: 60_000 }, () => {
  it("is how many swatches lie at which gauge, each in one bar, the far ones in the outermost", () => {
    const made = [20, 20.2, 20.5, 21, 30].map((stitches, index) =>
      tester({ id: `t${index}`, swatches: [swatch({ stitches })] }),
    );
    const [stitches] = analyseCall(callDocument(made)).gauges.findings;
    if (stitches === undefined) throw new Error("no gauge");
    const { from, width, counts } = stitches.bars;
    // By hand: bars of half a stitch about the stated 20, up to 15 % (3 stitches, 6 bars) to either side.
    expect([from, width, counts.length]).toEqual([16.75, 0.5, 13]);
    expect(counts).toEqual([0, 0, 0, 0, 0, 0, 2, 1, 1, 0, 0, 0, stitches.testers - 4]);
  });

  it("names who made no swatch, and counts those that were made with another tool", () => {
    const [main] = analyseCall(
      callDocument([
        tester({ id: "a", swatches: [swatch()] }),
        tester({ id: "b", swatches: [] }),
        tester({ id: "c", swatches: [swatch({ toolMm: 4.5 })] }),
      ]),
    ).gauges.fabrics;
    expect(main).toMatchObject({ swatches: 2, otherTools: [{ toolMm: 4.5, swatches: 1 }], without: ["b"] });
  });

  it("is the range of what a size's testers used of a yarn, without what is set aside", () => {
    const pattern = patternDocument({ yarns: [WOOL] });
    const used = [150, 160, 170].map((grams, index) =>
      tester({ id: `t${index}`, yarn: [{ yarn: "wool", grams, metresPer100g: 200 }] }),
    );
    const aside = tester({
      id: "far",
      yarn: [{ yarn: "wool", grams: 900, metresPer100g: 200, decision: "set-aside" }],
    });
    const [wool] = analyseCall(callDocument([...used, aside], { pattern })).yarn;
    // By hand: 200 m to 100 g.
    expect(wool?.sizes.map((size) => size.used)).toEqual([{ testers: 3, leastMetres: 300, mostMetres: 340 }, null]);
  });
});
