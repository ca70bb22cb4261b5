import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readingQuestions, readReport, typedOfReport } from "@/engine/reporting";
import type { PatternDocument } from "@/engine/pattern";
import { reportContext, typedSwatch } from "./report-context";

const contextOf = (craft: PatternDocument["craft"], patternMm: number) => {
  const context = reportContext();
  const fabrics = context.pattern.fabrics.map((fabric) => ({ ...fabric, toolMm: patternMm }));
  return { ...context, pattern: { ...context.pattern, craft, fabrics } };
};

const asked = (toolMm: string, patternMm = 4, craft: PatternDocument["craft"] = "knitting") => {
  const context = contextOf(craft, patternMm);
  return readingQuestions(readReport(typedSwatch({ toolMm }), context), context);
};

describe("the size of a tester's needles or hook", () => {
  it("is asked about where a bare number is near the pattern's only as a US number", () => {
    expect(asked("6")).toEqual([
      {
        field: "swatch.1.toolMm",
        keptField: null,
        slip: "us-size",
        message: "Is this US size 6, which is 4 mm, or 6 mm? The pattern has 4 mm needles.",
      },
    ]);
    expect(asked("6", 4, "crochet")).toMatchObject([
      { message: "Is this US size 6, which is 4 mm, or 6 mm? The pattern has a 4 mm hook." },
    ]);
    expect(asked("10½", 6.5)).toMatchObject([{ slip: "us-size" }]);
    // No needles of 11 mm are sold, so that this is US 11, near as 11 is to 9.
    expect(asked("11", 9)).toMatchObject([{ slip: "us-size" }]);
  });

  it.each([
    ["6 mm", 4],
    ["US 6", 4],
    ["US 6 (4 mm)", 4],
    ["6", 6],
    ["6", 5],
    ["4,0", 4],
    ["5", 4],
    ["4.25", 4],
    ["12", 4],
  ])("is not asked about for “%s” where the pattern has %d mm", (text, patternMm) => {
    expect(asked(text, patternMm)).toEqual([]);
    expect(asked(text, patternMm, "crochet")).toEqual([]);
  });

  it.each(["0,4", "0.4", "40"])("is asked about where its decimal point looks misplaced: “%s”", (text) => {
    const message = "Is the decimal point of this size in the right place? The pattern has 4 mm needles.";
    expect(asked(text)).toMatchObject([{ field: "swatch.1.toolMm", slip: "decimal", message }]);
    expect(asked(`${text} mm`)).toEqual([]);
  });

  it("is read by its US name, which the report shows and keeps", () => {
    const context = contextOf("crochet", 5);
    const read = readReport(typedSwatch({ toolMm: "US H/8" }), context);
    expect(read.faults).toEqual([]);
    expect(read.remarks).toEqual([{ field: "swatch.1.toolMm", message: "Read as 5 mm." }]);
    expect(read.report.swatches[0]?.toolMm).toBe(5);
    expect(typedOfReport(read, context)["swatch.1.toolMm"]).toBe("US H/8");
  });

  it("is wanted in millimetres where the hook is steel, whose numbers differ from maker to maker", () => {
    expect(readReport(typedSwatch({ toolMm: "US 7" }), contextOf("crochet", 1.5)).faults).toMatchObject([
      { field: "swatch.1.toolMm", message: expect.stringContaining("millimetres") },
    ]);
  });

  it("is never asked about where it is the pattern's own, in either scale", () => {
    let ran = 0;
    const sizes = fc.constantFrom(2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 3.75, 4, 4.5, 5, 5.5, 6, 6.5, 8, 9, 10, 15, 25);
    const crafts = fc.constantFrom("knitting" as const, "crochet" as const);
    fc.assert(
      fc.property(sizes, crafts, fc.constantFrom("", " mm"), (mm, craft, unit) => {
        expect(asked(`${mm}${unit}`, mm, craft)).toEqual([]);
        ran += 1;
      }),
      { numRuns: 200 },
    );
    expect(ran).toBe(200);
  });
});
