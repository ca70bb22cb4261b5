import { describe, expect, it } from "vitest";
import { gapBoard } from "../../../../src/features/results/gaps/gap-board";
import { gridContent, numberRows } from "../../../../src/features/results/gaps/grid-content";
import { gapQuerySchema } from "../../../../src/features/results/schema";
import { callDocument, reader } from "../../../factories/call";
import { patternDocument } from "../../../factories/pattern";
import { resultsOf } from "../../../factories/results";

const [first] = patternDocument().measurements;
const MANY = 200;

/** A pattern with so many measurements, of which two sizes make two cells each. */
function boardOf(measurements: number) {
  if (first === undefined) throw new Error("no measurement");
  const pattern = patternDocument({
    measurements: Array.from({ length: measurements }, (_, index) => ({
      ...first,
      id: `m-${index}`,
      label: `Point ${index}`,
    })),
  });
  return gapBoard(resultsOf(callDocument([reader("t0", { "m-0": 100 })], { pattern })), "cm");
}

const asked = (query: Record<string, string> = {}) => gapQuerySchema.parse(query);

describe("the differences of a large pattern", { timeout: 60_000 }, () => {
  const board = boardOf(MANY);

  it("come in pages that together contain each measurement once", () => {
    const { pages } = gridContent(board, asked());
    const shown = Array.from(
      { length: pages },
      (_, index) => gridContent(board, asked({ page: String(index + 1) })).content,
    );
    expect(pages).toBeGreaterThan(1);
    expect(shown.flatMap(({ rows }) => rows.map(({ id }) => id))).toEqual(board.rows.map((row) => row.measurement.id));
    for (const { rows, sizes } of shown) expect(rows.length * sizes.length).toBeLessThanOrEqual(150);
  });

  it("open at the page of the requested cell, whatever page the address names", () => {
    const cell = `small.m-${MANY - 1}`;
    const { page, pages, content } = gridContent(board, asked({ cell }));
    expect(page).toBe(pages);
    expect(content.rows.at(-1)?.id).toBe(`m-${MANY - 1}`);
    expect(numberRows(board, asked({ cell, view: "table", page: "1" })).content.map(({ key }) => key)).toContain(cell);
  });

  it("show the last page to a reader who asks for one beyond it", () => {
    expect(gridContent(board, asked({ page: "999" })).page).toBe(gridContent(board, asked()).pages);
  });

  it("leave out measurements without a matching cell, and mark the other cells as not matching", () => {
    const { content, pages } = gridContent(boardOf(3), asked({ show: "none" }));
    expect(pages).toBe(1);
    expect(content.rows.map(({ cells }) => cells.map(({ isOther }) => isOther ?? false))).toEqual([
      [true, false],
      [false, false],
      [false, false],
    ]);
  });
});
