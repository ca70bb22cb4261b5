import { describe, expect, it } from "vitest";
import { fieldOf, keysOf, newKey, parseField, readReport, typedOfReport } from "@/engine/reporting";
import { reportContext, typedSwatch } from "./report-context";

const bust = (part: "value" | "way" | "state" | "kept", key = "1") => fieldOf.reading("bust", key, part);

describe("fields", () => {
  it("are named by ids and keys, and parsed back", () => {
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

  it("keep their items in the order in which they were started, and two devices make two keys", () => {
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
      report: { ...empty, worked: { width: 98, height: 100 }, workedLengths: { rib: 5 }, workedTold: false },
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

  it("reads 0,4 as 0.4 wherever a number may be that small", () => {
    const { report, faults } = readReport(
      {
        ...typedSwatch({ toolMm: "0,4" }),
        "length.rib": "0,4",
        "reading.length.1.value": "0,4",
        ...yarnFields({ yarn: "wool", balls: "0,4", gramsPerBall: "50", metresPerBall: "160" }),
        hours: "0,4",
      },
      reportContext(),
    );
    expect(faults).toEqual([]);
    expect(report).toMatchObject({
      swatches: [{ toolMm: 0.4 }],
      workedLengths: { rib: 0.4 },
      readings: [{ cm: 0.4 }],
      yarn: [{ grams: 20 }],
      hours: 0.4,
    });
  });

  it("lets a written unit override the tester's, and reports what was read", () => {
    // By hand: 12 3/8 in = 12.375 × 2.54 = 31.4325 cm.
    const field = "reading.length.1.value";
    const read = readReport({ [field]: "12 3/8 in" }, reportContext());
    expect(read.report.readings).toEqual([{ measurement: "length", cm: 31.4325 }]);
    expect(read.typed).toEqual({ "readings[0].cm": "12 3/8 in" });
    expect(read.remarks).toEqual([{ field, message: "Read as 31.4 cm." }]);
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

  it("reads several readings of one measurement, in the order of their keys", () => {
    const typed = { [bust("value", "10")]: "101", [bust("value", "9")]: "99", [bust("state", "9")]: "unwashed" };
    const { report, keys } = readReport(typed, reportContext());
    expect(report.readings).toEqual([
      { measurement: "bust", cm: 99, state: "unwashed" },
      { measurement: "bust", cm: 101 },
    ]);
    expect(keys.readings).toEqual(["9", "10"]);
  });

  it("reads a swatch over 4 in, and assumes the only fabric", () => {
    const read = readReport(typedSwatch({ across: "4 in", along: "4 in" }), reportContext());
    expect(read.faults).toEqual([]);
    expect(read.report.swatches).toEqual([
      { fabric: "main", toolMm: 4, stitches: 20, acrossCm: 10.16, rows: 25, alongCm: 10.16, washed: true },
    ]);
  });

  it("reports what an incomplete swatch lacks, at its field, and does not send it", () => {
    const read = readReport(typedSwatch({ across: " ", washed: "" }), reportContext());
    expect(read.report.swatches).toEqual([]);
    expect(read.faults).toEqual([
      { field: "swatch.1.across", message: "The width that you counted the stitches over is missing." },
      { field: "swatch.1.washed", message: "Say whether this swatch was washed and dried." },
    ]);
  });

  it("ignores a swatch with nothing but choices", () => {
    const read = readReport(typedSwatch({ stitches: "", across: "", rows: "", along: "" }), reportContext());
    expect(read.faults).toEqual([]);
    expect(read.report.swatches).toEqual([]);
  });

  it("reads counts and lengths as worked", () => {
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
    expect(written.remarks).toEqual([{ field: "yarn.1.metresPerBall", message: "Read as 160 m." }]);
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
      { field: "yarn.1.after", message: "This is not less than the 48 that you began with." },
    ]);
  });

  it("reads the fit, and asks for a choice in addition to a comment", () => {
    const whole = readReport({ "fit.bust.scale": "-1", "fit.bust.says": " A little close. " }, reportContext());
    expect(whole.report.fit).toEqual([{ area: "bust", scale: -1, says: "A little close." }]);
    const words = readReport({ "fit.bust.says": "Fine." }, reportContext());
    expect(words.faults).toEqual([
      { field: "fit.bust.scale", message: "Choose how it fits here, in addition to your comment." },
    ]);
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

describe("whether the counts are told", () => {
  const told = (typed: Readonly<Record<string, string>>) => readReport(typed, reportContext()).report.workedTold;
  const numbers = { "worked.width": "98", "worked.height": "101", "length.rib": "5" };

  it("is so where each has a number, or the tester followed the pattern in the others", () => {
    expect(told({})).toBe(false);
    expect(told({ "worked.width": "98", "worked.height": "101" })).toBe(false);
    expect(told({ ...numbers, "length.rib": "five" })).toBe(false);
    expect(told(numbers)).toBe(true);
    expect(told({ asWritten: "yes" })).toBe(true);
    expect(told({ "worked.width": "98", asWritten: "yes" })).toBe(true);
    expect(told({ asWritten: "" })).toBe(false);
  });

  it("comes back as it was told: numbers that each were typed stay typed, also where they are the pattern's", () => {
    expect(typedOfReport(readReport(numbers, reportContext()), reportContext())).toEqual(numbers);
    expect(typedOfReport(readReport({}, reportContext()), reportContext())).toEqual({});
  });

  it("is read of a report from before the mark as following the pattern", () => {
    const { workedTold: _, ...older } = readReport({ "worked.width": "96" }, reportContext()).report;
    const typed = typedOfReport({ report: older, typed: {} }, reportContext());
    expect(typed).toEqual({ "worked.width": "96", asWritten: "yes" });
    expect(readReport(typed, reportContext()).report).toEqual({ ...older, workedTold: true });
  });
});

describe("typedOfReport", () => {
  it("returns every number's text as it was typed, in the tester's unit", () => {
    const typed = { [bust("value")]: "12 3/8", [bust("way")]: "flat", "length.rib": '2"', "worked.width": "102 sts" };
    const context = reportContext({ unit: "in" });
    expect(typedOfReport(readReport(typed, context), context)).toEqual(typed);
  });
});
