import { describe, expect, it } from "vitest";
import type { TypedReport } from "@/engine/reporting";
import { filledReport } from "@/features/testing/report/filled-report";
import { swatchTries } from "@/features/testing/report/steps/swatch-tries";
import { formatLength } from "@/ui/format-length";
import { patternDocument } from "../../../../factories/pattern";
import { typedSwatch } from "../../../../engine/reporting/report-context";

const SLIM = patternDocument({
  fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 16, rows: 25 } }],
});

function tries(typed: TypedReport, unit: "cm" | "in" = "cm") {
  const context = { pattern: SLIM, size: "small", unit, formatLength: (cm: number) => formatLength(cm, unit) };
  const inHand = { context, typed, revisionId: "", version: 1, sent: null, changed: [], asked: [], ended: null };
  return swatchTries(filledReport("tester", inHand), undefined);
}

const isOutlookShown = (typed: TypedReport, unit?: "cm" | "in") =>
  tries(typed, unit).map(({ outcome }) => outcome?.outlook != null);

describe("a tester's swatches with what each would do", () => {
  it("shows what a swatch on gauge would do", () => {
    expect(isOutlookShown(typedSwatch({ stitches: "16" }))).toEqual([true]);
  });

  it.each([
    ["whether stitches and rows are swapped", { stitches: "25", rows: "16" }, "cm"],
    ["whether a width is in inches", { stitches: "16", across: "4", along: "4" }, "cm"],
    ["whether the counts are those of one inch", { stitches: "4", rows: "6" }, "cm"],
    ["whether 10 cm were 4 in", { stitches: "16", across: "10 cm", along: "10 cm" }, "in"],
    ["whether a gauge far from the pattern’s is correct", { stitches: "30" }, "cm"],
  ] as const)("gives no advice and no size while it is open %s", (_question, parts, unit) => {
    expect(isOutlookShown(typedSwatch(parts), unit)).toEqual([false]);
    expect(isOutlookShown({ ...typedSwatch(parts), "swatch.1.kept": "yes" }, unit)).toEqual([true]);
  });

  it("gives no advice and no size while it is open which scale a hook’s number is on", () => {
    const typed = typedSwatch({ stitches: "16", toolMm: "6" });
    expect(isOutlookShown(typed)).toEqual([false]);
    expect(isOutlookShown({ ...typed, "swatch.1.toolMm": "6 mm" })).toEqual([true]);
  });

  it("holds back only the swatch that the question is about", () => {
    const typed = { ...typedSwatch({ stitches: "25", rows: "16" }), ...typedSwatch({ stitches: "16" }, "2") };
    expect(isOutlookShown(typed)).toEqual([false, true]);
  });
});
