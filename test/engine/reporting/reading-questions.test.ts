import { describe, expect, it } from "vitest";
import { readingQuestions, readReport, type ReportContext } from "@/engine/reporting";
import { reportContext, typedSwatch } from "./report-context";

const asked = (typed: Readonly<Record<string, string>>, context: ReportContext = reportContext()) =>
  readingQuestions(readReport(typed, context), context);

/* By design, on gauge: bust 2 × 98 ÷ 2 + 2 × 1 = 100 cm, length 100 ÷ 2.5 = 40 cm. */
describe("questions at entry", () => {
  it("asks nothing of what comes out as it should", () => {
    const typed = { ...typedSwatch(), "reading.bust.1.value": "101", "reading.length.1.value": "39,5" };
    expect(asked(typed)).toEqual([]);
    expect(asked({})).toEqual([]);
  });

  it.each([
    [
      "50",
      "half-girth",
      "That is half of what we would expect here (about 100.0 cm): was it laid flat and not doubled?",
    ],
    ["200", "twice-girth", "That is twice what we would expect here (about 100.0 cm): was it doubled twice?"],
    ["39.5", "inches-as-cm", "Is that in inches? We would expect about 100.0 cm."],
    ["19.7", "inches-and-flat", "Is that in inches, laid flat and not doubled? We would expect about 100.0 cm."],
    ["10", "decimal", "Is the decimal point in the right place? We would expect about 100.0 cm."],
    [
      "150",
      null,
      "That is far from what your gauge gives (about 100.0 cm). Please measure once more, or say that it is right.",
    ],
  ])("asks about a bust of %s", (text, slip, says) => {
    expect(asked({ ...typedSwatch(), "reading.bust.1.value": text })).toEqual([
      { field: "reading.bust.1.value", keptField: "reading.bust.1.kept", slip, message: says },
    ]);
  });

  it("asks whether a girth that was doubled here was measured all around", () => {
    const typed = { ...typedSwatch(), "reading.bust.1.value": "101", "reading.bust.1.way": "flat" };
    const message = "Doubled, that is twice what we would expect here (about 100.0 cm): did you measure all around?";
    expect(asked(typed)).toMatchObject([{ field: "reading.bust.1.value", slip: "twice-girth", message }]);
    expect(asked({ ...typed, "reading.bust.1.way": "around" })).toEqual([]);
  });

  it("asks in the tester's unit", () => {
    const inInches = asked({ "reading.bust.2.value": "100" }, reportContext({ unit: "in" }));
    expect(inInches).toMatchObject([
      {
        field: "reading.bust.2.value",
        slip: "cm-as-inches",
        message: "Is that in centimetres? We would expect about 39.4 in.",
      },
    ]);
  });

  it("uses the tester's own gauge and counts", () => {
    // By hand: 18 over 10 cm and 120 stitches: 2 × 120 ÷ 1.8 + 2 = 135.3 cm.
    const typed = { ...typedSwatch({ stitches: "18" }), "worked.width": "120", "reading.bust.1.value": "135" };
    expect(asked(typed)).toEqual([]);
    expect(asked({ ...typed, "reading.bust.1.value": "67.5" })).toMatchObject([{ slip: "half-girth" }]);
  });

  it("does not ask again about confirmed entries, nor about measurements changed on purpose", () => {
    const typed = { ...typedSwatch(), "reading.bust.1.value": "150" };
    expect(asked({ ...typed, "reading.bust.1.kept": "yes" })).toEqual([]);
    expect(asked({ ...typed, "changed.bust": "yes" })).toEqual([]);
    expect(asked({ ...typed, "reading.bust.1.state": "unwashed" })).toHaveLength(1);
  });

  it("asks whether two measurements are exchanged", () => {
    const typed = { ...typedSwatch(), "reading.bust.1.value": "40", "reading.length.1.value": "100" };
    expect(asked(typed).map(({ slip }) => slip)).toContain("swapped-letters");
  });

  it.each([
    [{ stitches: "35", rows: "20" }, null, "stitches"],
    [{ stitches: "25", rows: "20" }, null, null],
    [{ stitches: "20", rows: "12.5" }, "ridges-as-rows", "rows"],
    [{ across: "4", along: "4" }, "inches-as-cm", "across"],
    [{ stitches: "5", rows: "6.5" }, "per-inch", "across"],
    [{ stitches: "5", rows: "6", across: "4 in", along: "4 in" }, "per-inch", "across"],
    [{ stitches: "5", rows: "6.5", across: "1 in", along: "1 in" }, null, null],
  ])("asks about a swatch of %o", (parts, slip, part) => {
    const found = asked(typedSwatch(parts));
    if (part === null) expect(found).toEqual([]);
    else expect(found).toMatchObject([{ field: `swatch.1.${part}`, keptField: "swatch.1.kept", slip }]);
    expect(asked({ ...typedSwatch(parts), "swatch.1.kept": "yes" })).toEqual([]);
  });

  it("asks whether stitches and rows are swapped, and does not use that swatch", () => {
    const context = reportContext();
    const [fabric] = context.pattern.fabrics;
    if (fabric === undefined) throw new Error("no fabric");
    const slim = { ...fabric, gauge: { stitches: 16, rows: 25 } };
    const other = { ...context, pattern: { ...context.pattern, fabrics: [slim] } };
    const typed = { ...typedSwatch({ stitches: "25", rows: "16" }), "reading.bust.1.value": "124" };
    // By hand: 2 × 98 ÷ 1.6 + 2 = 124.5 cm at the stated gauge; at the exchanged one 80.4.
    expect(asked(typed, other)).toMatchObject([{ field: "swatch.1.stitches", slip: "stitches-for-rows" }]);
  });

  it("asks those who work in inches whether 10 cm were 4 in, and nobody else", () => {
    const typed = typedSwatch({ across: "10 cm", along: "10 cm" });
    expect(asked(typed, reportContext({ unit: "in" }))).toMatchObject([
      { field: "swatch.1.across", slip: "four-inches" },
    ]);
    expect(asked(typed)).toEqual([]);
    const fourInches = typedSwatch({ across: "4", along: "4" });
    expect(asked(fourInches, reportContext({ unit: "in" }))).toEqual([]);
  });

  it("asks about ounces", () => {
    // By hand: 2 × 100 × 98 = 19 600 stitches of √(10 ÷ 20 × 10 ÷ 25) = 0.447 cm are 87.65 m; at 4.5 loops that is
    // 394 m, and at 320 m in 100 g 123 g, or 4.3 oz.
    const band = { "yarn.1.yarn": "wool", "yarn.1.gramsPerBall": "50", "yarn.1.metresPerBall": "160" };
    const used = (before: string) => asked({ ...band, "yarn.1.before": before, "yarn.1.after": "0" });
    expect(used("123")).toEqual([]);
    expect(used("4.3")).toMatchObject([{ field: "yarn.1.before", keptField: "yarn.1.kept", slip: "ounces-as-grams" }]);
    expect(used("4.3 oz")).toEqual([]);
  });

  it("asks whether one ball was weighed instead of all", () => {
    // By hand: 87.65 m of stitches (see above) need 3 × 87.65 = 263 m at least, more than the 160 m of a ball.
    const band = { "yarn.1.yarn": "wool", "yarn.1.gramsPerBall": "50", "yarn.1.metresPerBall": "160" };
    const message =
      "That is one ball, and this many stitches usually take 2 or more. Is it the weight of one ball instead of all that you used?";
    const weighed = { ...band, "yarn.1.before": "51", "yarn.1.after": "0" };
    expect(asked(weighed)).toEqual([{ field: "yarn.1.before", keptField: "yarn.1.kept", slip: "one-ball", message }]);
    expect(asked({ ...weighed, "yarn.1.kept": "yes" })).toEqual([]);
    expect(asked({ ...band, "yarn.1.balls": "1" })).toMatchObject([{ field: "yarn.1.balls", slip: "one-ball" }]);
    expect(asked({ ...band, "yarn.1.balls": "2,5" })).toEqual([]);
    const thick = { ...weighed, "yarn.1.gramsPerBall": "100", "yarn.1.metresPerBall": "600", "yarn.1.before": "100" };
    expect(asked(thick)).toEqual([]);
  });

  it("asks whether one ball was weighed even where it would be little yarn, but not too little", () => {
    // By hand: 200 m in 50 g ÷ 87.65 m is a ratio of 2.3, which alone is not asked about.
    const band = { "yarn.1.yarn": "wool", "yarn.1.gramsPerBall": "50", "yarn.1.metresPerBall": "200" };
    expect(asked({ ...band, "yarn.1.balls": "1" })).toMatchObject([{ slip: "one-ball" }]);
    expect(asked({ ...band, "yarn.1.before": "40", "yarn.1.after": "0", "yarn.1.metresPerBall": "250" })).toEqual([]);
  });

  it("asks nothing where the pattern has no numbers yet", () => {
    const context = reportContext();
    const ungraded = { ...context, pattern: { ...context.pattern, grading: {} } };
    expect(asked({ "reading.bust.1.value": "50" }, ungraded)).toEqual([]);
  });
});
