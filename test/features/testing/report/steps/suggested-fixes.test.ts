import { describe, expect, it } from "vitest";
import type { TypedReport } from "../../../../../src/engine/reporting";
import { filledReport } from "../../../../../src/features/testing/report/filled-report";
import { suggestedFixes } from "../../../../../src/features/testing/report/steps/suggested-fixes";
import { formatLength } from "../../../../../src/ui/format-length";
import { patternDocument } from "../../../../factories/pattern";

const SWATCH = {
  "swatch.1.toolMm": "4",
  "swatch.1.stitches": "20",
  "swatch.1.across": "10",
  "swatch.1.rows": "25",
  "swatch.1.along": "10",
  "swatch.1.washed": "yes",
};

function report(typed: TypedReport, unit: "cm" | "in" = "cm", pattern = patternDocument()) {
  const asTyped = (cm: number) => formatLength(cm, unit);
  const context = { pattern, size: "small", unit, formatLength: asTyped };
  const inHand = { context, typed, revisionId: "", version: 1, sent: null, changed: [], asked: [], ended: null };
  return filledReport("tester", inHand);
}

function fixes(typed: TypedReport, unit: "cm" | "in" = "cm") {
  const filled = report({ ...SWATCH, ...typed }, unit);
  return filled.questions.map((question) => [question.slip, ...suggestedFixes(question, filled)]);
}

// By design the bust is 100 cm and the length 40 cm.
describe("an entry error fixed by one tap", () => {
  it("doubles a girth that was laid flat", () => {
    expect(fixes({ "reading.bust.1.value": "50,5" })).toEqual([
      ["half-girth", { label: "Use 2 × 50,5 = 101.0 cm", changes: { "reading.bust.1.way": "flat" } }],
    ]);
  });

  it("does not double a girth that was measured all around or doubled already", () => {
    const typed = { "reading.bust.1.value": "101", "reading.bust.1.way": "flat" };
    expect(fixes(typed)).toEqual([
      [
        "twice-girth",
        { label: "Use 101, measured all around", changes: { "reading.bust.1.way": "around" } },
        { label: "Use 101, already doubled", changes: { "reading.bust.1.way": "flat doubled" } },
      ],
    ]);
  });

  it("halves a girth that was doubled twice", () => {
    expect(fixes({ "reading.bust.1.value": "201", "reading.bust.1.way": "flat doubled" })).toEqual([
      ["twice-girth", { label: "Use half: 100.5", changes: { "reading.bust.1.value": "100.5" } }],
    ]);
  });

  it("reads inches and doubles them where a girth was measured flat in inches", () => {
    // By hand: 2 × 19.75 in = 39.5 in = 100.33 cm.
    expect(fixes({ "reading.bust.1.value": "19 3/4" })).toEqual([
      [
        "inches-and-flat",
        {
          label: "Use 2 × 19 3/4 in = 100.3 cm",
          changes: { "reading.bust.1.value": "19 3/4 in", "reading.bust.1.way": "flat" },
        },
      ],
    ]);
  });

  it("reads centimetres and doubles them where a girth was measured flat in centimetres by somebody in inches", () => {
    // By hand: 2 × 50 cm = 39.37 in.
    expect(
      fixes({ "swatch.1.across": "10.1 cm", "swatch.1.along": "10.1 cm", "reading.bust.1.value": "50" }, "in"),
    ).toEqual([
      [
        "cm-and-flat",
        {
          label: "Use 2 × 50 cm = 39 3/8 in",
          changes: { "reading.bust.1.value": "50 cm", "reading.bust.1.way": "flat" },
        },
      ],
    ]);
    expect(fixes({ "reading.bust.1.value": "127" })).toEqual([[null]]);
  });

  it("moves a decimal point, and keeps a decimal comma", () => {
    expect(fixes({ "reading.length.1.value": "4,05" })).toEqual([
      ["decimal", { label: "Use 40,5", changes: { "reading.length.1.value": "40,5" } }],
    ]);
    expect(fixes({ "swatch.1.across": "100", "swatch.1.along": "100" })).toEqual([
      ["decimal", { label: "Use 10", changes: { "swatch.1.across": "10", "swatch.1.along": "10" } }],
    ]);
  });

  it("writes the inch over which stitches and rows were counted, and the inches of a swatch", () => {
    expect(fixes({ "swatch.1.stitches": "5", "swatch.1.rows": "6,5" })).toEqual([
      ["per-inch", { label: "It was 1 in", changes: { "swatch.1.across": "1 in", "swatch.1.along": "1 in" } }],
    ]);
    expect(fixes({ "swatch.1.across": "4", "swatch.1.along": "4" })).toEqual([
      ["inches-as-cm", { label: "Use 4 in", changes: { "swatch.1.across": "4 in", "swatch.1.along": "4 in" } }],
    ]);
  });

  it("writes the scale of a hook behind its number", () => {
    expect(fixes({ "swatch.1.toolMm": "6" })).toEqual([
      [
        "us-size",
        { label: "It is US 6", changes: { "swatch.1.toolMm": "US 6" } },
        { label: "It is 6 mm", changes: { "swatch.1.toolMm": "6 mm" } },
      ],
    ]);
    expect(fixes({ "swatch.1.toolMm": "0,4" })).toEqual([
      [
        "decimal",
        { label: "It is 4 mm", changes: { "swatch.1.toolMm": "4 mm" } },
        { label: "It is 0,4 mm", changes: { "swatch.1.toolMm": "0,4 mm" } },
      ],
    ]);
  });

  it("counts two rows for a ridge", () => {
    expect(fixes({ "swatch.1.rows": "12,5" })).toEqual([
      ["ridges-as-rows", { label: "Use 25 rows", changes: { "swatch.1.rows": "25" } }],
    ]);
  });

  it("writes 4 in only where 10 cm stand", () => {
    expect(fixes({ "swatch.1.across": "10 cm", "swatch.1.along": "5" }, "in")[0]?.[1]).toMatchObject({
      changes: { "swatch.1.across": "4 in" },
    });
  });

  it("writes the unit behind a length in the other one", () => {
    expect(fixes({ "reading.length.1.value": "15 3/4" })).toEqual([
      ["inches-as-cm", { label: "Use 15 3/4 in", changes: { "reading.length.1.value": "15 3/4 in" } }],
    ]);
    expect(
      fixes({ "swatch.1.across": "10 cm", "swatch.1.along": "10 cm", "reading.length.1.value": "40" }, "in")[0]?.[0],
    ).toBe("four-inches");
  });

  it("swaps stitches and rows", () => {
    const fabric = { id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 38 } };
    const typed = { ...SWATCH, "swatch.1.stitches": "38", "swatch.1.rows": "20" };
    const filled = report(typed, "cm", patternDocument({ fabrics: [fabric] }));
    expect(filled.questions.flatMap((question) => suggestedFixes(question, filled))).toEqual([
      {
        label: "Swap them: 20 stitches and 38 rows",
        changes: { "swatch.1.stitches": "20", "swatch.1.rows": "38" },
      },
    ]);
  });

  it("is not offered if nothing clear fixes it, and a confirmed number is not questioned", () => {
    expect(fixes({ "reading.length.1.value": "57" })).toEqual([[null]]);
    expect(fixes({ "reading.length.1.value": "57", "reading.length.1.kept": "yes" })).toEqual([]);
  });
});
