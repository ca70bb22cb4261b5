import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testerFaults, testerSchema } from "@/engine/pattern";
import { CHOICES, parseField, readReport, typedOfReport } from "@/engine/reporting";
import { reportContext, typedSwatch } from "./report-context";

const NUMBERS = ["12", "38,5", "12 3/8", "12 3/8 in", "100 mm", "9½", "40 cm", "3.25", '15"', "98.6", "0.3"];
/** A swatch of 0.3 cm is none: with these stitches and rows it would have a gauge that is refused. */
const WIDTHS = NUMBERS.filter((text) => text !== "0.3");
const SWATCH = [
  "fabric",
  "toolMm",
  "stitches",
  "across",
  "rows",
  "along",
  "washed",
  "on",
  "worked",
  "used",
  "kept",
  "blocking",
];
const FIELDS = [
  ...SWATCH.flatMap((part) => [`swatch.1.${part}`, `swatch.2b.${part}`]),
  ...["width", "height", "nothing"].map((id) => `worked.${id}`),
  ...["width", "height"].map((id) => `worked.${id}.kept`),
  ...["bust", "length"].flatMap((id) => [`changed.${id}`, ...readingFields(id)]),
  ...[
    "yarn",
    "how",
    "before",
    "after",
    "balls",
    "gramsPerBall",
    "metresPerBall",
    "tailsInWeight",
    "label",
    "strands",
  ].map((part) => `yarn.1.${part}`),
  "length.rib",
  "fit.bust.scale",
  "fit.bust.says",
  "fit.bust.prefers",
  "blocking",
  "hours",
  "asWritten",
];

function readingFields(id: string): string[] {
  return ["1", "2"].flatMap((key) => ["value", "way", "state", "kept"].map((part) => `reading.${id}.${key}.${part}`));
}

const choice = fc.constantFrom(...Object.values(CHOICES).flat(), "main", "wool", "trim");
const likely = fc.oneof(fc.constantFrom(...NUMBERS), choice, fc.constant(""));
const anything = fc.dictionary(
  fc.oneof(fc.constantFrom(...FIELDS), fc.string()),
  fc.oneof(likely, fc.string({ unit: "binary" })),
  { maxKeys: 60 },
);

/** A form whose every field holds what belongs there. */
const sensible = fc
  .record({
    widths: fc.array(fc.constantFrom(...WIDTHS), { minLength: 3, maxLength: 3 }),
    texts: fc.array(fc.constantFrom(...NUMBERS), { minLength: 12, maxLength: 12 }),
    ways: fc.array(fc.constantFrom("", ...CHOICES.way), { minLength: 4, maxLength: 4 }),
    counts: fc.array(fc.constantFrom("", "98", "102 sts", "0"), { minLength: 2, maxLength: 2 }),
    balls: fc.boolean(),
    says: fc.constantFrom("", "Fine.", "Close at the front"),
    scale: fc.constantFrom(...CHOICES.scale),
    on: fc.constantFrom("", "swatch", "garment"),
    kept: fc.constantFrom("", "yes"),
  })
  .map(({ widths, texts, ways, counts, balls, says, scale, on, kept }): Record<string, string> => {
    const at = (index: number) => texts[index] ?? "1";
    const width = (index: number) => widths[index] ?? "1";
    return {
      ...typedSwatch(
        { across: width(0), along: width(1), stitches: "20½", rows: "25,5", toolMm: "G-6 (4 mm)", on, kept },
        "3",
      ),
      ...typedSwatch({ across: width(2), washed: "no", worked: "flat", used: "yes", fabric: "main" }, "4"),
      "worked.width": counts[0] ?? "",
      "worked.height": counts[1] ?? "",
      "length.rib": at(3),
      "reading.bust.1.value": at(4),
      "reading.bust.1.way": ways[0] ?? "",
      "reading.bust.5.value": at(5),
      "reading.bust.5.way": ways[1] ?? "",
      "reading.bust.5.kept": kept,
      "reading.length.1.value": at(6),
      "reading.length.1.way": ways[2] ?? "",
      "reading.length.1.state": "unwashed",
      "changed.length": kept,
      "yarn.1.yarn": "trim",
      "yarn.1.how": balls ? "balls" : "weighed",
      "yarn.1.before": "7 oz",
      "yarn.1.after": "12",
      "yarn.1.balls": "2½",
      "yarn.1.gramsPerBall": "50 g",
      "yarn.1.metresPerBall": balls ? "175 yd" : "160",
      "yarn.1.tailsInWeight": "yes",
      "fit.bust.scale": scale,
      "fit.bust.says": says,
      hours: "12,5",
      asWritten: kept,
    };
  });

describe("any report", () => {
  it("never throws, is valid as a document, and names fields that were typed or belong to an incomplete item", () => {
    let ran = 0;
    fc.assert(
      fc.property(anything, fc.constantFrom("cm" as const, "in" as const), (typed, unit) => {
        const context = reportContext({ unit });
        const { report, faults } = readReport(typed, context);
        const tester = testerSchema.parse({ id: "tester", ...report });
        expect(testerFaults(tester, context.pattern)).toEqual([]);
        for (const { field, message } of faults) {
          expect(parseField(field)).not.toBeNull();
          expect(message).toMatch(/[.?]$/);
        }
        ran += 1;
      }),
      { numRuns: 500 },
    );
    expect(ran).toBe(500);
  });

  it("comes back the same from its fields, whatever unit it is then shown in", () => {
    let ran = 0;
    const unit = fc.constantFrom("cm" as const, "in" as const);
    fc.assert(
      fc.property(sensible, unit, unit, (typed, typedIn, shownIn) => {
        const sent = readReport(typed, reportContext({ unit: typedIn }));
        expect(sent.faults).toEqual([]);
        const shown = reportContext({ unit: shownIn });
        const again = readReport(typedOfReport(sent, shown), shown);
        expect(again.faults).toEqual([]);
        expect(again.report).toEqual(sent.report);
        expect(again.typed).toEqual(sent.typed);
        ran += 1;
      }),
      { numRuns: 150 },
    );
    expect(ran).toBe(150);
  });

  it("comes back the same without its texts", () => {
    fc.assert(
      fc.property(sensible, fc.constantFrom("cm" as const, "in" as const), (typed, unit) => {
        const context = reportContext({ unit });
        const { report } = readReport(typed, context);
        expect(readReport(typedOfReport({ report, typed: {} }, context), context).report).toEqual(report);
      }),
      { numRuns: 150 },
    );
  });
});
