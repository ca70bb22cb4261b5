import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testerFaults, testerSchema } from "@/engine/pattern";
import { CHOICES, fieldOf, keysOf, newKey, parseField, readReport, typedOfReport } from "@/engine/reporting";
import { reportContext, typedSwatch } from "./report-context";

const bust = (part: "value" | "way" | "state" | "kept", key = "1") => fieldOf.reading("bust", key, part);

describe("fields", () => {
  it("are named by ids and keys, and taken apart again", () => {
    expect(parseField(fieldOf.reading("bust", "2k", "way"))).toEqual({
      kind: "reading",
      id: "bust",
      key: "2k",
      part: "way",
    });
    expect(parseField("hours")).toEqual({ kind: "hours" });
    for (const name of ["", "hours.", "swatch.1", "swatch.1.colour", "reading.bust.1.value.x", "worked.A", "fit.bust"])
      expect(parseField(name)).toBeNull();
  });

  it("keep their items in the order that they were begun, and two devices make two keys", () => {
    const typed = { "yarn.10.how": "", "yarn.2b.how": "", "yarn.2a.how": "", "swatch.7.rows": "1" };
    expect(keysOf(typed, "yarn")).toEqual(["2a", "2b", "10"]);
    expect(newKey(["2a", "10"], "q")).toBe("11q");
    expect(newKey([])).toBe("1");
  });
});

describe("readReport", () => {
  it("makes an empty report with all counts and lengths of the pattern where nothing is typed", () => {
    const empty = { size: "small", swatches: [], readings: [], yarn: [] };
    expect(readReport({}, reportContext())).toEqual({
      report: { ...empty, worked: { width: 98, height: 100 }, workedLengths: { rib: 5 } },
      typed: {},
      keys: { swatches: [], readings: [], yarn: [] },
      faults: [],
      remarks: [],
    });
  });

  it("reads a decimal comma, and keeps the text with its unit", () => {
    const { report, typed } = readReport({ "reading.length.1.value": "38,5" }, reportContext());
    expect(report.readings).toEqual([{ measurement: "length", cm: 38.5 }]);
    expect(typed).toEqual({ "readings[0].cm": "38,5 cm" });
  });

  it("lets a written unit win over hers, and says what was read", () => {
    // By hand: 12 3/8 in = 12.375 × 2.54 = 31.4325 cm.
    const field = "reading.length.1.value";
    const read = readReport({ [field]: "12 3/8 in" }, reportContext());
    expect(read.report.readings).toEqual([{ measurement: "length", cm: 31.4325 }]);
    expect(read.typed).toEqual({ "readings[0].cm": "12 3/8 in" });
    expect(read.remarks).toEqual([{ field, says: "Read as 31.4 cm." }]);
    const inInches = readReport({ [field]: "12 3/8" }, reportContext({ unit: "in" }));
    expect(inInches.report.readings).toEqual(read.report.readings);
    expect(inInches.remarks).toEqual([]);
  });

  it.each([
    ["flat", "48,5", 97, "flat doubled", "48,5 cm, laid flat"],
    ["flat", "48.5", 97, "flat doubled", "48.5 cm, laid flat"],
    ["flat doubled", "97", 97, "flat doubled", undefined],
    ["around", "97", 97, "around", undefined],
  ])("gives a girth whole that was typed as %s", (way, text, cm, documentWay, kept) => {
    const read = readReport({ [bust("value")]: text, [bust("way")]: way }, reportContext());
    expect(read.report.readings).toEqual([{ measurement: "bust", cm, way: documentWay }]);
    expect(read.typed["readings[0].cm"]).toBe(kept);
  });

  it("never doubles what is no girth", () => {
    const read = readReport({ "reading.length.1.value": "40", "reading.length.1.way": "flat" }, reportContext());
    expect(read.report.readings).toEqual([{ measurement: "length", cm: 40 }]);
  });

  it("takes several readings of one measurement, in the order of their keys", () => {
    const typed = { [bust("value", "10")]: "101", [bust("value", "9")]: "99", [bust("state", "9")]: "unwashed" };
    const { report, keys } = readReport(typed, reportContext());
    expect(report.readings).toEqual([
      { measurement: "bust", cm: 99, state: "unwashed" },
      { measurement: "bust", cm: 101 },
    ]);
    expect(keys.readings).toEqual(["9", "10"]);
  });

  it("reads a swatch over 4 in, and takes the only fabric for granted", () => {
    const read = readReport(typedSwatch({ across: "4 in", along: "4 in" }), reportContext());
    expect(read.faults).toEqual([]);
    expect(read.report.swatches).toEqual([
      { fabric: "main", toolMm: 4, stitches: 20, acrossCm: 10.16, rows: 25, alongCm: 10.16, washed: true },
    ]);
  });

  it("names what a begun swatch misses, at its field, and does not send it", () => {
    const read = readReport(typedSwatch({ across: " ", washed: "" }), reportContext());
    expect(read.report.swatches).toEqual([]);
    expect(read.faults).toEqual([
      { field: "swatch.1.across", says: "The width that you counted the stitches over is missing." },
      { field: "swatch.1.washed", says: "Say whether this swatch was washed and dried." },
    ]);
  });

  it("takes a swatch with nothing but choices for none", () => {
    const read = readReport(typedSwatch({ stitches: "", across: "", rows: "", along: "" }), reportContext());
    expect(read.faults).toEqual([]);
    expect(read.report.swatches).toEqual([]);
  });

  it("reads counts and lengths as she worked them", () => {
    const typed = { "worked.width": "102 sts", "length.rib": "2 in", "changed.length": "yes", hours: "12 1/2 h" };
    const read = readReport(typed, reportContext());
    expect(read.report).toMatchObject({
      worked: { width: 102, height: 100 },
      workedLengths: { rib: 5.08 },
      changed: ["length"],
      hours: 12.5,
    });
    expect(read.typed).toEqual({ "worked.width": "102 sts", "workedLengths.rib": "2 in", hours: "12 1/2 h" });
  });

  it("weighs yarn before and after", () => {
    // By hand: 250 − 48 = 202 g; 160 m in 50 g are 320 m in 100 g.
    const typed = { yarn: "wool", before: "250", after: "48 g", gramsPerBall: "50", metresPerBall: "160" };
    const read = readReport(yarnFields(typed), reportContext());
    expect(read.faults).toEqual([]);
    expect(read.report.yarn).toEqual([{ yarn: "wool", grams: 202, metresPer100g: 320 }]);
    expect(read.typed).toMatchObject({ "yarn[0].before": "250", "yarn[0].after": "48 g", "yarn[0].how": "weighed" });
  });

  it("counts balls, their length in yards", () => {
    // By hand: 2 1/2 × 50 = 125 g; 175 yd = 175 × 0.9144 = 160.02 m in 50 g.
    const typed = { yarn: "wool", balls: "2 1/2", gramsPerBall: "50 g", metresPerBall: "175" };
    const inches = readReport(yarnFields(typed), reportContext({ unit: "in" }));
    expect(inches.report.yarn).toEqual([{ yarn: "wool", grams: 125, metresPer100g: 320.04 }]);
    const written = readReport(yarnFields({ ...typed, metresPerBall: "175 yd" }), reportContext());
    expect(written.report).toEqual(inches.report);
    expect(written.remarks).toEqual([{ field: "yarn.1.metresPerBall", says: "Read as 160 m." }]);
  });

  it("names what yarn misses, and refuses more left than there was", () => {
    const missing = readReport(yarnFields({ before: "250" }), reportContext());
    expect(missing.faults.map(({ field }) => field)).toEqual([
      "yarn.1.yarn",
      "yarn.1.gramsPerBall",
      "yarn.1.metresPerBall",
      "yarn.1.after",
    ]);
    const typed = { yarn: "wool", before: "48", after: "250", gramsPerBall: "50", metresPerBall: "160" };
    expect(readReport(yarnFields(typed), reportContext()).faults).toEqual([
      { field: "yarn.1.after", says: "This is not less than the 48 that you began with." },
    ]);
  });

  it("reads the fit, and asks for a choice beside words", () => {
    const whole = readReport({ "fit.bust.scale": "-1", "fit.bust.says": " A little close. " }, reportContext());
    expect(whole.report.fit).toEqual([{ area: "bust", scale: -1, says: "A little close." }]);
    const words = readReport({ "fit.bust.says": "Fine." }, reportContext());
    expect(words.faults).toEqual([{ field: "fit.bust.scale", says: "Choose how it fits here, beside your words." }]);
  });

  it("tells what the pattern has no place for, and does not send it", () => {
    const read = readReport({ "worked.collar": "12", nonsense: "x", "worked.height": "" }, reportContext());
    expect(read.faults).toEqual([]);
    expect(read.remarks.map(({ field }) => field)).toEqual(["worked.collar", "nonsense"]);
  });
});

function yarnFields(parts: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(parts).map(([part, text]) => [`yarn.1.${part}`, text]));
}

const NUMBERS = ["12", "38,5", "12 3/8", "12 3/8 in", "100 mm", "9½", "40 cm", "3.25", '15"', "98.6", "0.3"];
const SWATCH = ["fabric", "toolMm", "stitches", "across", "rows", "along", "washed", "on", "worked", "used", "kept"];
const FIELDS = [
  ...SWATCH.flatMap((part) => [`swatch.1.${part}`, `swatch.2b.${part}`]),
  ...["width", "height", "nothing"].map((id) => `worked.${id}`),
  ...["bust", "length"].flatMap((id) => [`changed.${id}`, ...READING_FIELDS(id)]),
  ...["yarn", "how", "before", "after", "balls", "gramsPerBall", "metresPerBall", "tailsInWeight"].map(
    (part) => `yarn.1.${part}`,
  ),
  "length.rib",
  "fit.bust.scale",
  "fit.bust.says",
  "hours",
  "asWritten",
];

function READING_FIELDS(id: string): string[] {
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
    texts: fc.array(fc.constantFrom(...NUMBERS), { minLength: 12, maxLength: 12 }),
    ways: fc.array(fc.constantFrom("", ...CHOICES.way), { minLength: 4, maxLength: 4 }),
    counts: fc.array(fc.constantFrom("", "98", "102 sts", "0"), { minLength: 2, maxLength: 2 }),
    balls: fc.boolean(),
    says: fc.constantFrom("", "Fine.", "Close at the front"),
    scale: fc.constantFrom(...CHOICES.scale),
    on: fc.constantFrom("", "swatch", "garment"),
    kept: fc.constantFrom("", "yes"),
  })
  .map(({ texts, ways, counts, balls, says, scale, on, kept }): Record<string, string> => {
    const at = (index: number) => texts[index] ?? "1";
    return {
      ...typedSwatch(
        { across: at(0), along: at(1), stitches: "20½", rows: "25,5", toolMm: "G-6 (4 mm)", on, kept },
        "3",
      ),
      ...typedSwatch({ across: at(2), washed: "no", worked: "flat", used: "yes", fabric: "main" }, "4"),
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
  it("never throws, is valid as a document, and names fields that were typed or belong to a begun item", () => {
    let ran = 0;
    fc.assert(
      fc.property(anything, fc.constantFrom("cm" as const, "in" as const), (typed, unit) => {
        const context = reportContext({ unit });
        const { report, faults } = readReport(typed, context);
        const tester = testerSchema.parse({ id: "she", ...report });
        expect(testerFaults(tester, context.pattern)).toEqual([]);
        for (const { field, says } of faults) {
          expect(parseField(field)).not.toBeNull();
          expect(says).toMatch(/[.?]$/);
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
      { numRuns: 300 },
    );
    expect(ran).toBe(300);
  });

  it("comes back the same without its texts", () => {
    fc.assert(
      fc.property(sensible, fc.constantFrom("cm" as const, "in" as const), (typed, unit) => {
        const context = reportContext({ unit });
        const { report } = readReport(typed, context);
        expect(readReport(typedOfReport({ report, typed: {} }, context), context).report).toEqual(report);
      }),
      { numRuns: 300 },
    );
  });

  it("gives back every text of a number as it was typed, in her unit", () => {
    const typed = { [bust("value")]: "12 3/8", [bust("way")]: "flat", "length.rib": '2"', "worked.width": "102 sts" };
    const context = reportContext({ unit: "in" });
    expect(typedOfReport(readReport(typed, context), context)).toEqual(typed);
  });
});
