import { describe, expect, it } from "vitest";
import { explainedBy, gapBoard } from "../../../../src/features/results/gaps/gap-board";
import { matrixContent } from "../../../../src/features/results/gaps/matrix-content";
import { gapQuerySchema } from "../../../../src/features/results/schema";
import { callDocument, reader } from "../../../factories/call";
import { resultsOf } from "../../../factories/results";

const readers = ["t0", "t1", "t2"].map((id) => reader(id, { bust: 106, length: 40 }));
const results = resultsOf(callDocument(readers));
const marks = new Map([["small", "not yet re-tested"]]);
const asked = (query: Record<string, string> = {}) => gapQuerySchema.parse(query);

describe("the matrix of numbers", { timeout: 60_000 }, () => {
  const matrix = (unit: "cm" | "in", query = {}) =>
    matrixContent(gapBoard({ ...results, marks }, unit), results.pattern, asked(query)).content;

  it("has what is planned, measured and the difference, in the reader's unit, which add up as shown", () => {
    const [bust] = matrix("cm").rows;
    const [small, large] = bust?.cells ?? [];
    // 98 stitches twice at 20 to 10 cm, and the edging of 1 cm twice.
    expect(small?.planned).toBe("100.0");
    expect(Number(small?.measured)).toBeCloseTo(100 + Number(small?.gap), 6);
    expect(Number(small?.measured)).toBeGreaterThan(102);
    expect(matrix("in").rows[0]?.cells[0]?.planned).toBe("39 3/8");
    // Nobody has measured the large one, whatever its neighbour suggests.
    expect(large).toMatchObject({ measured: "", gap: "" });
  });

  it("marks a corrected size, and what does not match the filter", () => {
    expect(matrix("cm").sizes.map(({ mark }) => mark)).toEqual(["not yet re-tested", undefined]);
    const { rows } = matrix("cm", { show: "none" });
    expect(rows.map(({ cells }) => cells.map(({ isOther }) => isOther ?? false))).toEqual([
      [true, false],
      [true, false],
    ]);
  });
});

describe("what a cause explains", () => {
  it("are the certain differences that it moves the same way", () => {
    const invented = {
      ...{ kind: "offset", id: "bust", unit: "cm", estimate: 5, standardError: 1, explains: 1, evidence: 9 },
      ...{ restsOn: [], rivals: [], solvable: [], breaks: null, movesCm: [1, 0, 1, 0] },
    } as (typeof results.differences.causes)[number];
    const differences = (verdict: "off" | "holds", estimate: number) => ({
      ...results.differences,
      causes: [{ ...invented, estimate, movesCm: [1, 0, 1, 0] }],
      cells: results.differences.cells.map((each) =>
        each.size === "small" && each.measurement === "bust"
          ? { ...each, verdict, gapCm: 5 }
          : { ...each, verdict: null },
      ),
    });
    const explained = (verdict: "off" | "holds", estimate: number) =>
      explainedBy(gapBoard({ pattern: results.pattern, differences: differences(verdict, estimate) }, "cm"), 1);
    expect(explained("off", 5)).toEqual({ explained: 1, off: 1 });
    expect(explained("off", -5)).toEqual({ explained: 0, off: 1 });
    expect(explained("holds", 5)).toEqual({ explained: 0, off: 0 });
  });
});
