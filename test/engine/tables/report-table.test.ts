import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testerFaults, type PatternDocument } from "@/engine/pattern";
import {
  guessMeasurementChoices,
  guessReportChoices,
  readMeasurementTable,
  readReportTable,
  type ReportChoices,
} from "@/engine/tables";

function patternOf(rows: readonly (readonly string[])[]): PatternDocument {
  const cells = rows.map((row) => [...row]);
  const stated = { name: "Meadow", gaugeStitches: "17", gaugeRows: "24", gaugeOver: "10 cm", toolMm: "5" };
  const table = readMeasurementTable(cells, { ...guessMeasurementChoices(cells), ...stated });
  if (!table.ok) throw new Error("the test's own table is wrong");
  return table.pattern;
}

const PATTERN = patternOf([
  ["", "", "XS", "M", "2X"],
  ["A", "Bust around", "90", "102", "126"],
  ["", "Stitches at the bust", "76", "86", "106"],
  ["B", "Upper arm around", "31", "36", "44"],
  ["C", "Body length", "52", "54", "56"],
]);

const QUESTIONS = [
  "Timestamp",
  "Your name",
  "What size did you make?",
  "Swatch: stitches over 4 in",
  "Swatch: rows over 4 in",
  "B. Upper arm around, in cm",
  "A (inches)",
  "Stitches at the bust",
];

function read(answers: readonly (readonly string[])[], change: Partial<ReportChoices> = {}) {
  const cells = [QUESTIONS, ...answers].map((row) => [...row]);
  return readReportTable(cells, { ...guessReportChoices(cells, PATTERN), ...change }, { pattern: PATTERN });
}

const GOOD = ["1 May", "Ann", "Size M", "17,5", "24 rows", "36,5", "40 1/4", "86"];

describe("a pasted table of reports", () => {
  it("is understood from a form's questions without a correction", () => {
    const { columns, swatchOver } = guessReportChoices([QUESTIONS, GOOD], PATTERN);
    expect(columns.map(({ kind }) => kind)).toEqual([
      "leave out",
      "name",
      "size",
      "swatch stitches",
      "swatch rows",
      "measurement",
      "measurement",
      "count",
    ]);
    expect(columns[5]).toEqual({ kind: "measurement", id: "upper-arm-around", unit: "cm", flat: false });
    expect(columns[6]).toEqual({ kind: "measurement", id: "bust-around", unit: "in", flat: false });
    expect(swatchOver).toBe("4 in");
  });

  it("is named by the answer to the question for a name, and by a user name only without one", () => {
    const kinds = (questions: readonly string[], answers: readonly string[]) =>
      guessReportChoices(
        [
          [...questions, "Size"],
          [...answers, "M"],
        ],
        PATTERN,
      ).columns.map(({ kind }) => kind);
    for (const heading of ["Handle", "Your profile", "User name", "username", "Screen name", "Account"])
      expect(kinds([heading, "Name"], ["knits_a_lot", "Ann"])).toEqual(["leave out", "name", "size"]);
    // Whatever the network is called, a handle begins with its sign.
    expect(kinds(["Somewhere online", "Name"], ["@knits_a_lot", "Ann"])).toEqual(["leave out", "name", "size"]);
    expect(kinds(["Where else are you?", "Handle"], ["@knits", "knits_a_lot"])).toEqual(["name", "leave out", "size"]);
    expect(kinds(["User name"], ["knits_a_lot"])).toEqual(["name", "size"]);
  });

  it("leaves a measurement a measurement though somebody answers it with a sign in front", () => {
    const { columns } = guessReportChoices(
      [
        ["Size", "A (cm)"],
        ["M", "@ 102"],
        ["M", "101"],
        ["M", "103"],
      ],
      PATTERN,
    );
    expect(columns.map(({ kind }) => kind)).toEqual(["size", "measurement"]);
  });

  it("becomes a tester, with the typed texts stored", () => {
    // By hand: 40 1/4 in × 2.54 = 102.235 cm; 4 in = 10.16 cm.
    const table = read([GOOD]);
    expect(table.ok && table.testers[0]).toMatchObject({
      name: "Ann",
      tester: {
        id: "tester-1",
        size: "m",
        swatches: [
          { fabric: "main-fabric", toolMm: 5, stitches: 17.5, acrossCm: 10.16, rows: 24, alongCm: 10.16, washed: true },
        ],
        worked: { "stitches-at-the-bust": 86 },
        readings: [
          { measurement: "upper-arm-around", cm: 36.5 },
          { measurement: "bust-around", cm: 102.235 },
        ],
      },
      typed: {
        "readings[0].cm": "36,5 cm",
        "readings[1].cm": "40 1/4 in",
        "swatches[0].stitches": "17,5",
        "swatches[0].acrossCm": "4 in",
      },
    });
  });

  it("contains every count: the tester's if reported, otherwise the pattern's for the size", () => {
    const table = read([GOOD]);
    const graded = PATTERN.counts.map(({ id }) => [id, PATTERN.grading?.[id]?.m]);
    expect(graded.length).toBeGreaterThan(1);
    expect(table.ok && table.testers[0]?.tester.worked).toEqual({
      ...Object.fromEntries(graded),
      "stitches-at-the-bust": 86,
    });
  });

  it("finds inches and girths laid flat by their numbers", () => {
    // M's upper arm is 36 cm: 14.2 in; half of it 18 cm.
    const guess = (answer: string) =>
      guessReportChoices(
        [
          ["Size", "Upper arm around"],
          ["M", answer],
        ],
        PATTERN,
      ).columns[1];
    expect(guess("14.2")).toMatchObject({ unit: "in", flat: false });
    expect(guess("18")).toMatchObject({ unit: "cm", flat: true });
    expect(guess("36")).toMatchObject({ unit: "cm", flat: false });
  });

  it.each([
    ["m", "m"],
    ["Size M", "m"],
    ["2XL", "x-2x"],
    ["XXL", "x-2x"],
  ])("knows the size %s", (typed, size) => {
    const table = read([GOOD.with(2, typed)]);
    expect(table.ok && table.testers[0]?.tester.size).toBe(size);
  });

  it("refuses a size that is not the pattern's, with the sizes there are", () => {
    const table = read([GOOD, GOOD.with(2, "XL")]);
    expect(table).toMatchObject({
      ok: false,
      faults: [{ row: 2, column: 2, message: "“XL” is not one size of this pattern. Its sizes are XS, M, 2X." }],
    });
  });

  it("treats an empty cell and n/a as missing, and text in a number as a fault", () => {
    const table = read([GOOD.with(5, "n/a").with(6, "")]);
    expect(table.ok && table.testers[0]?.tester.readings).toEqual([]);
    const wrong = read([GOOD, GOOD.with(5, "snug")]);
    expect(wrong.ok ? [] : wrong.faults.map(({ row, column }) => [row, column])).toEqual([[2, 5]]);
  });

  it("questions an upper arm of 9 cm and a swatch of 200 stitches", () => {
    const table = read([GOOD, GOOD.with(5, "9").with(3, "200")]);
    expect(table.ok && table.questions.map(({ row, column }) => [row, column])).toEqual([
      [2, 5],
      [2, 3],
    ]);
  });

  it("gives two testers with the same name different ids, and avoids existing ids", () => {
    const cells = [QUESTIONS, GOOD, GOOD].map((row) => [...row]);
    const table = readReportTable(cells, guessReportChoices(cells, PATTERN), {
      pattern: PATTERN,
      taken: new Set(["tester-1"]),
    });
    expect(table.ok && table.testers.map(({ tester }) => tester.id)).toEqual(["tester-2", "tester-3"]);
    expect(table.ok && table.remarks).toContain(
      "One name stands more than once; each row is kept as a tester of its own.",
    );
  });

  it("leaves out what cannot be read by the designer's word, and says how much is read", () => {
    const rows = [GOOD, GOOD.with(5, "snug"), GOOD.with(2, "XL")];
    const stopped = read(rows);
    expect(stopped.ok ? [] : stopped.faults.map(({ row, column }) => [row, column])).toEqual([
      [2, 5],
      [3, 2],
    ]);
    const table = read(rows, { leaveUnread: true });
    if (!table.ok) throw new Error("faulty");
    expect(table.testers.map(({ tester }) => tester.readings.length)).toEqual([2, 1]);
    expect(table.leftOut).toHaveLength(2);
    expect(table.sum).toEqual({
      ...{ measurements: 2, ofMeasurements: 3, testers: 2, ofTesters: 3 },
      ...{ readings: 3, ofReadings: 6 },
    });
  });

  it("reads yarn, fit, comments and the unit that a tester says", () => {
    const cells = [
      ["Name", "Size", "cm or inches?", "Upper arm", "How does it fit at the to fit?", "Anything else?"],
      ["Ann", "M", "inches", "14 1/4", "a bit loose", "wide neck"],
      ["Bo", "XS", "cm", "31", "just right", ""],
    ];
    const table = readReportTable(cells, guessReportChoices(cells, PATTERN), { pattern: PATTERN });
    if (!table.ok) throw new Error(JSON.stringify(table.faults));
    // By hand: 14 1/4 in × 2.54 = 36.195 cm.
    expect(table.testers.map(({ tester }) => tester.readings.map(({ cm }) => cm))).toEqual([[36.195], [31]]);
    expect(table.testers.map(({ comment }) => comment)).toEqual([
      expect.stringContaining("wide neck"),
      expect.anything(),
    ]);
  });

  it("says where a comment is too long to be kept whole", () => {
    const cells = ["Name\tSize\tUpper arm\tAnything else?", `Ann\tM\t36\t${"wide ".repeat(500)}`].map((row) =>
      row.split("\t"),
    );
    const table = readReportTable(cells, guessReportChoices(cells, PATTERN), { pattern: PATTERN });
    expect(table.ok && table.remarks.join(" ")).toContain("One comment is longer than 2000 characters");
  });

  it("never throws, and what is read fits the pattern", () => {
    const text = fc.oneof(
      fc.string({ maxLength: 10 }),
      fc.constantFrom("M", "xs", "36", "14 1/2", "n/a", "yes", "17 sts", "constructor"),
    );
    let ran = 0;
    fc.assert(
      fc.property(fc.array(fc.array(text, { maxLength: 9 }), { maxLength: 6 }), fc.boolean(), (rows, headed) => {
        const cells = headed ? [QUESTIONS, ...rows] : rows;
        const table = readReportTable(cells, guessReportChoices(cells, PATTERN), { pattern: PATTERN });
        if (table.ok) expect(table.testers.flatMap(({ tester }) => testerFaults(tester, PATTERN))).toEqual([]);
        else expect(table.faults.length).toBeGreaterThan(0);
        ran += 1;
      }),
      { numRuns: 300 },
    );
    expect(ran).toBe(300);
  });
});
