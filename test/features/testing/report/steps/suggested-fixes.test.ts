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
  const inHand = { context, typed, revisionId: "", version: 1, sent: null, changed: [], ended: null };
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

  it("leaves a girth that was already doubled", () => {
    const typed = { "reading.bust.1.value": "101", "reading.bust.1.way": "flat" };
    expect(fixes(typed)).toEqual([
      ["twice-girth", { label: "Use 101, already doubled", changes: { "reading.bust.1.way": "flat doubled" } }],
    ]);
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
