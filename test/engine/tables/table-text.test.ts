import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answerMeasurements, parseMeasurementsInput, parseTableText, withCells } from "@/engine/tables";

describe("the text of a table", () => {
  it("is parted by tabs, else by the mark that stands in every line", () => {
    expect(parseTableText("a\tb,c\nd\te")).toEqual([
      ["a", "b,c"],
      ["d", "e"],
    ]);
    expect(parseTableText("Name;Bust\nAnn;94,5\n\nBo;96,5")).toEqual([
      ["Name", "Bust"],
      ["Ann", "94,5"],
      ["Bo", "96,5"],
    ]);
  });

  it("keeps quoted marks and lines together, and forgives the sign of inches", () => {
    expect(parseTableText('Name,Note\nAnn,"wide, and\nshort ""too"""\nBo,33" around')).toEqual([
      ["Name", "Note"],
      ["Ann", 'wide, and\nshort "too"'],
      ["Bo", '33" around'],
    ]);
    expect(parseTableText('34"\t36"\n"38"\t"\n')).toEqual([
      ['34"', '36"'],
      ["38", '"'],
    ]);
  });

  it("reads back as the same cells after one of them is changed", () => {
    const cell = fc.stringMatching(/^[a-z0-9;"\n ]{0,6}$/);
    let ran = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 2, maxLength: 5 }), cell, (rows, value) => {
        const text = withCells(
          "a\tb\tc",
          [...rows, ["x", "y", "z"]].flatMap((cells, row) =>
            cells.map((one, column) => ({ row, column, value: column === 0 ? `r${one}` : one })),
          ),
        );
        const before = parseTableText(text);
        const after = parseTableText(withCells(text, [{ row: 1, column: 2, value }]));
        expect(after).toEqual(before.with(1, (before[1] ?? []).with(2, value)));
        ran += 1;
      }),
    );
    expect(ran).toBe(100);
  });

  it("says what is too much about a table of 100,000 cells", () => {
    const line = Array.from({ length: 20 }, (_, index) => String(index + 30)).join("\t");
    const parsed = parseMeasurementsInput({ text: Array.from({ length: 5_000 }, () => line).join("\n") });
    expect(parsed.ok ? [] : parsed.faults).toEqual([
      {
        path: "text",
        says: "This table has 5,000 rows and 20 columns; at most 300 rows can be read at once. Paste only the part with your numbers.",
      },
    ]);
  });

  it("names unread cells by their place in the text, empty rows and turned tables included", () => {
    const parsed = parseMeasurementsInput({ text: "Size\tBust (cm)\tLength\nS\t90\t50\n\nM\t9o\t51\nL\t100\t52" });
    if (!parsed.ok) throw new Error("faulty");
    const { rows, unread } = answerMeasurements(parsed.document);
    expect(rows.map(({ cm }) => cm)).toEqual([
      [90, null, 100],
      [50, 51, 52],
    ]);
    expect(unread).toEqual([{ row: 4, column: 2, text: "9o" }]);
  });
});
