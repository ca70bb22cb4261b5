import { describe, expect, it } from "vitest";
import type { Swatch } from "../../../../src/engine/pattern";
import { swatchView, type FabricSwatches } from "../../../../src/features/results/swatches/swatch-view";
import {
  acceptedCopy,
  gaugeAdvice,
  gaugeVerdict,
  growthWords,
  otherToolWords,
} from "../../../../src/features/results/swatches/swatch-copy";
import { swatchesCsv } from "../../../../src/features/results/swatches/swatches-csv";
import { callDocument } from "../../../factories/call";
import { patternDocument, swatch, tester } from "../../../factories/pattern";
import { resultsOf } from "../../../factories/results";

/** A call whose testers made these swatches, one list a tester; the pattern says 20 stitches and 25 rows. */
function analysisOf(swatches: readonly (readonly Swatch[])[], alva = "Alva") {
  const document = callDocument(swatches.map((list, index) => tester({ id: `t${index}`, swatches: list })));
  return resultsOf(document, { t0: alva });
}

function only(analysis: ReturnType<typeof analysisOf>, unit: "cm" | "in" = "cm"): FabricSwatches {
  const [fabric] = swatchView(analysis, unit);
  if (fabric === undefined) throw new Error("no fabric");
  return fabric;
}

/** Two swatches with 26.25 rows to 10 cm before blocking and 25 after; the pattern has a length that is measured while working. */
function grown(growth?: number): FabricSwatches {
  const length = { id: "body", label: "Body", cm: 38, measured: "working" as const };
  const pattern = patternDocument({ lengths: [growth === undefined ? length : { ...length, growth }] });
  const before = { stitches: 20, acrossCm: 10, rows: 26.25, alongCm: 10 };
  const testers = ["t0", "t1"].map((id) => tester({ id, swatches: [swatch({ before })] }));
  const [fabric] = swatchView(resultsOf(callDocument(testers, { pattern })), "cm");
  if (fabric === undefined) throw new Error("no fabric");
  return fabric;
}

const tight = only(analysisOf([22, 22.5, 22, 21.5, 22].map((stitches) => [swatch({ stitches })])));

describe("swatches compared with the stated gauge", { timeout: 60_000 }, () => {
  it("states what every swatch is used for", () => {
    const { rows, without } = only(
      analysisOf([
        [swatch(), swatch({ stitches: 21 })],
        [swatch({ toolMm: 4.5 })],
        [swatch({ decision: "set-aside" })],
        [],
        [swatch({ washed: false, on: "garment" }), swatch()],
      ]),
    );
    // By docs/method.md#prediction: of several the last washed one counts, but one taken on the garment wins over it.
    expect(rows.map(({ name, use }) => [name, use])).toEqual([
      ["Alva", "replaced"],
      ["Alva", "both"],
      ["t1", "own sizes"],
      ["t2", "set aside"],
      ["t4", "both"],
      ["t4", "replaced"],
    ]);
    expect(without).toEqual({ names: ["t2", "t3"], all: 2 });
  });

  it("says how blocking changes the fabric, and what the pattern should say of it", () => {
    // By hand: 26.25 ÷ 25 rows.
    const found = "2 swatches were counted before and after blocking: blocked, the fabric is no wider and 5 % longer.";
    expect(growthWords(tight)).toBeNull();
    expect(growthWords(grown(1.05))).toBe(found);
    expect(growthWords(grown())).toBe(
      `${found} Lengths that are measured while working come out × 1.05, where the pattern says × 1. This is not counted as a difference; state × 1.05 with these lengths, or what they measure while working.`,
    );
  });

  it("says where the garment was blocked otherwise than its swatch", () => {
    const document = callDocument([tester({ id: "t0", swatches: [swatch({ blocking: "wet" })], blocking: "steamed" })]);
    const [row] = only(resultsOf(document)).rows;
    expect(row && acceptedCopy(row)).toBe("washed; wet-blocked, the garment steamed");
  });

  it("says whether testers work more tightly, and what to do about it", () => {
    const [stitches, rows] = tight.gauges;
    if (stitches === undefined || rows === undefined) throw new Error("no gauges");
    expect(gaugeVerdict(stitches, tight, "cm")).toBe(
      "Your testers work more tightly than the pattern: 22 stitches to 10 cm where the pattern says 20.",
    );
    expect(gaugeVerdict(rows, tight, "cm")).toBe(
      "Your testers work to the pattern’s gauge: 25 rows to 10 cm where the pattern says 25.",
    );
    // By hand: 20 ÷ 22 is 9 % less.
    expect(gaugeAdvice(tight, { craft: "crochet", unit: "cm" })).toBe(
      "This doesn’t affect the differences, which take each tester’s own gauge into account. But people who work like them and follow the pattern’s counts get a garment about 9 % narrower. State 22 stitches to 10 cm; or go up a hook size and check what that does to the rows.",
    );
  });

  it("gives gauges over 4 in for readers of inches", () => {
    const inches = only(analysisOf([[swatch()], [swatch()], [swatch()]]), "in");
    // By hand: 20 to 10 cm are 20 × 10.16 ÷ 10 = 20.32 to 4 in.
    expect(inches.gauges[0]?.stated).toBeCloseTo(20.32, 10);
    expect(inches.rows[0]?.rows).toBeCloseTo(25.4, 10);
  });

  it("gives no verdict with two swatches, and says when there are none", () => {
    const two = only(analysisOf([[swatch()], [swatch({ stitches: 22 })]]));
    expect(two.gauges.map((gauge) => gaugeVerdict(gauge, two, "cm"))[0]).toBe(
      "Not enough data: 2 swatches show 21 stitches to 10 cm. It takes 3 to compare with the pattern’s 20.",
    );
    expect(gaugeAdvice(two, { craft: "crochet", unit: "cm" })).toBeNull();
    const none = only(analysisOf([[]]));
    expect(none.gauges.map((gauge) => gaugeVerdict(gauge, none, "cm"))[0]).toBe("No swatch shows the stitches yet.");
  });

  it("lists swatches made with another needle or hook, in the craft's words", () => {
    const mixed = only(analysisOf([[swatch({ toolMm: 4.5 })], [swatch({ toolMm: 3.5 })], [swatch()]]));
    expect(otherToolWords(mixed, "knitting")).toBe(
      "Not made with 4 mm needles, as the pattern recommends: 1 with 3.5 mm needles, 1 with 4.5 mm needles. These are not used for the stated gauge, only for each tester’s own garment.",
    );
    expect(otherToolWords(tight, "knitting")).toBeNull();
  });

  it("are exported with names that cannot become formulas", () => {
    const csv = swatchesCsv(swatchView(analysisOf([[swatch()]], "=Alva"), "cm"), "cm");
    expect(csv.split("\r\n")).toEqual([
      "fabric,tester,size,needle or hook (mm),stitches over 10 cm,pattern's stitches over 10 cm,rows over 10 cm,pattern's rows over 10 cm,washed,on the garment,counts for",
      `Main,"'=Alva",S,4,20,20,25,25,yes,no,both`,
    ]);
  });
});
