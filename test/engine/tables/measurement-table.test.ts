import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parsePattern } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import { guessMeasurementChoices, readMeasurementTable, transpose, type MeasurementChoices } from "@/engine/tables";

const TABLE = `	Measurement (cm)	XS	S	M
	To fit bust	76-81	82–87	88
A	Bust around	90,5	96.5	102
	Stitches at the bust	76	82	86
B	Upper arm around	31	33 1/2	36
C	Body length	52	53	54
D	Armhole depth	18	19	20
	Rows at the armhole	42	44	48`;

const STATED = { name: "Meadow", gaugeStitches: "17", gaugeRows: "24", gaugeOver: "10 cm", toolMm: "5" };

function cellsOf(text: string): string[][] {
  return text.split("\n").map((line) => line.split("\t"));
}

function read(text: string, choices: Partial<MeasurementChoices> = {}) {
  const cells = cellsOf(text);
  return readMeasurementTable(cells, { ...guessMeasurementChoices(cells), ...STATED, ...choices });
}

function made(text: string, choices: Partial<MeasurementChoices> = {}) {
  const table = read(text, choices);
  if (!table.ok) throw new Error(table.faults.map(({ message }) => message).join("\n"));
  return table;
}

function faults(text: string) {
  const table = read(text);
  return table.ok ? [] : table.faults.map(({ row, column, message }) => ({ row, column, says: message }));
}

describe("a pasted table of finished measurements", () => {
  it("is understood without a correction", () => {
    const { rows, headerRow, letterColumn, labelColumn, sizeColumns, unit } = guessMeasurementChoices(cellsOf(TABLE));
    expect({ headerRow, letterColumn, labelColumn, sizeColumns, unit }).toEqual({
      headerRow: 0,
      letterColumn: 0,
      labelColumn: 1,
      sizeColumns: [2, 3, 4],
      unit: "cm",
    });
    expect(rows.map(({ kind }) => kind)).toEqual([
      "leave out",
      "body",
      "measurement",
      "stitches",
      "measurement",
      "measurement",
      "measurement",
      "rows",
    ]);
    expect(rows.map(({ workedIn, countRow, girth }) => [workedIn, countRow, girth]).slice(2, 7)).toEqual([
      ["stitches", 3, true],
      ["stitches", null, false],
      ["stitches", null, true],
      ["ruler", null, false],
      ["rows", 7, false],
    ]);
  });

  it("is read alike with its sizes down the side", () => {
    const turned = transpose(cellsOf(TABLE));
    const table = readMeasurementTable(turned, { ...guessMeasurementChoices(turned), ...STATED });
    expect(table.ok && table.pattern).toEqual(made(TABLE).pattern);
  });

  it("splits a girth into twice its stitches and the rest", () => {
    // By hand, XS: 2 × 76 stitches at 1.7 a cm are 89.41176 cm; 90.5 published leaves 1.08824.
    const [bust] = made(TABLE).breakdowns;
    expect(bust?.times).toBe(2);
    expect(bust?.countedCm[0]).toBeCloseTo(152 / 1.7, 12);
    expect(bust?.restCm[0]).toBeCloseTo(90.5 - 152 / 1.7, 12);
  });

  it("works out a count from the published centimetres where there is none", () => {
    // By hand: 31, 33.5 and 36 cm at 1.7 stitches a cm are 52.7, 56.95 and 61.2 stitches.
    expect(made(TABLE).pattern.grading?.["upper-arm-around-stitches"]).toEqual({ xs: 53, s: 57, m: 61 });
  });

  it("uses the middle of a span as the body, and orders sizes by it", () => {
    const { pattern } = made(TABLE);
    expect(pattern.sizeBy).toBe("to-fit-bust");
    expect(pattern.sizes.map(({ body }) => body["to-fit-bust"])).toEqual([78.5, 84.5, 88]);
  });

  it("orders sizes by the first girth if the table has no body, and says so", () => {
    const { pattern, remarks } = made("\tS\tM\nBody length\t50\t52\nBust around\t90\t96");
    expect(pattern.sizes.map(({ body }) => body["to-fit"])).toEqual([90, 96]);
    expect(remarks).toEqual(["The table has no body measurement, so sizes are ordered by the finished “Bust around”."]);
  });

  it("reads inches where the heading says so", () => {
    // 38 1/4 in × 2.54 = 97.155 cm.
    const { pattern } = made("Measurement (inches)\tS\tM\nBust around\t36\t38 1/4");
    expect(pattern.measurements[0]?.target).toEqual({ cm: { s: 36 * 2.54, m: 97.155 } });
  });

  it("never guesses stitches for a length that is worked up, from whatever words", () => {
    const choices = guessMeasurementChoices(
      cellsOf("\tS\tM\nUnderarm to hem\t36\t38\nSide seam\t40\t41\nShoulder to shoulder\t37\t39\nArmhole drop\t18\t19"),
    );
    expect(choices.rows.slice(1).map(({ workedIn }) => workedIn)).toEqual(["ruler", "ruler", "stitches", "rows"]);
  });

  it("takes a gauge over four inches where the table is in inches and names no width", () => {
    const over = (table: string) => guessMeasurementChoices(cellsOf(table)).gaugeOver;
    expect(over("Measurement (inches)\tS\tM\nBust around\t36\t38 1/4")).toBe("4 in");
    expect(over("Measurement (cm)\tS\tM\nBust around\t90\t96")).toBe("10 cm");
  });

  it("says what is wrong at its row and column", () => {
    expect(faults(TABLE.replace("33 1/2", "wide").replace("\t82\t", "\t82.5\t"))).toEqual([
      { row: 3, column: 3, says: "“82.5” is not a whole number, and stitches and rows are counted whole." },
      { row: 4, column: 3, says: "“wide” is not a number. Write it like 38.5, 38,5 or 12 3/8." },
    ]);
    expect(faults("\tS\tM\nBust\t90\t")).toEqual([
      { row: 1, column: 2, says: "This cell is empty. Every size needs a number here; fill it, or leave out the row." },
    ]);
  });

  it("questions a bust of 9 cm, and a count that leaves more than a tenth unexplained", () => {
    const slip = made(TABLE.replace("\t96.5\t", "\t9\t")).questions;
    expect(slip.filter(({ row, column }) => row === 2 && column === 3)).toHaveLength(1);
    const rows = guessMeasurementChoices(cellsOf(TABLE)).rows.map((row, index) =>
      index === 2 ? { ...row, times: "1" } : row,
    );
    expect(made(TABLE, { rows }).questions.map(({ row, column }) => [row, column])).toEqual([[2, null]]);
  });

  it("gives ids that are valid and never “all”", () => {
    const { pattern } = made("\tAll\t2X\t2x\nBust!\t90\t96\t102\nBust\t90\t96\t102");
    expect(pattern.sizes.map(({ id }) => id)).toEqual(["all-of-it", "x-2x", "x-2x-2"]);
    expect(pattern.measurements.map(({ id }) => id)).toEqual(["bust", "bust-2"]);
  });
});

const cellText = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom(
    "XS",
    "S",
    "M",
    "A",
    "Bust around",
    "Stitches at the bust",
    "12 3/8",
    "38,5",
    "n/a",
    "9",
    "constructor",
    "__proto__",
  ),
);
const anyTable = fc.array(fc.array(cellText, { maxLength: 8 }), { maxLength: 12 });

describe("any pasted table", () => {
  it("never throws, and what is made is a pattern", () => {
    let ran = 0;
    fc.assert(
      fc.property(anyTable, (cells) => {
        const table = readMeasurementTable(cells, { ...guessMeasurementChoices(cells), ...STATED });
        if (table.ok) expect(parsePattern(table.pattern).ok).toBe(true);
        else expect(table.faults.length).toBeGreaterThan(0);
        ran += 1;
      }),
      { numRuns: 300 },
    );
    expect(ran).toBe(300);
  });

  it("makes patterns whose design values are the published ones", () => {
    const number = fc.double({ min: 0.5, max: 200, noNaN: true });
    const whole = fc.integer({ min: 0, max: 400 });
    let compared = 0;
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number, number, whole), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 5, max: 40 }),
        (sizes, gauge) => {
          const line = (label: string, at: 0 | 1 | 2) => [
            label,
            ...sizes.map((size) => (at === 2 ? String(size[at]) : size[at].toFixed(6))),
          ];
          const cells = [
            ["", ...sizes.map((_, index) => `Size ${index + 1}`)],
            line("Bust around", 0),
            line("Stitches at the bust", 2),
            line("Armhole depth", 1),
          ];
          const table = readMeasurementTable(cells, {
            ...guessMeasurementChoices(cells),
            ...STATED,
            gaugeStitches: String(gauge),
            unit: "cm",
          });
          if (!table.ok) throw new Error(JSON.stringify(table.faults));
          table.pattern.sizes.forEach((size) => {
            const index = Number(size.label.replace("Size ", "")) - 1;
            const { measurements } = predict({ pattern: table.pattern, size: size.id });
            expect(measurements.map(({ designCm }) => designCm)[0]).toBeCloseTo(
              Number(sizes[index]?.[0].toFixed(6)),
              9,
            );
            expect(measurements.map(({ designCm }) => designCm)[1]).toBeCloseTo(
              Number(sizes[index]?.[1].toFixed(6)),
              9,
            );
            compared += 2;
          });
        },
      ),
    );
    expect(compared).toBeGreaterThan(200);
  });
});
