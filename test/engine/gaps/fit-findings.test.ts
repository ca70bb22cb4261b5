import { describe, expect, it } from "vitest";
import { fitFindings, gaps } from "@/engine/gaps";
import type { Tester } from "@/engine/pattern";
import { callDocument, reader } from "../../factories/call";
import { patternDocument } from "../../factories/pattern";

/** Testers on size whose bust feels so, −2 tight to 2 loose. */
function feeling(size: "small" | "large", scales: readonly (-2 | -1 | 0 | 1 | 2)[]): Tester[] {
  const bust = size === "small" ? 100 : 120;
  return scales.map((scale, index) => reader(`${size}-${index}`, { bust }, { size, fit: [{ area: "bust", scale }] }));
}

describe("fit beside the gap", { timeout: 60_000 }, () => {
  it("finds the sizes that are on size and yet tight", () => {
    // By hand: 4 of 5 by chance at one in three: 5·(1/3)⁴·(2/3) + (1/3)⁵ = 11/243, under one in twenty.
    const call = callDocument([...feeling("small", [0, 0, 0, 1]), ...feeling("large", [-1, -2, -1, 0, -1])]);
    expect(fitFindings(call, gaps(call).cells)).toEqual([
      { measurement: "bust", area: "bust", feels: "tight", from: "large", to: "large", agree: 4, testers: 5 },
    ]);
  });

  it("begins at the first size that answered, and not at one that is off or silent", () => {
    const sizes = ["a", "b", "c", "d"].map((id, index) => ({ id, label: id, body: { bust: 90 + 10 * index } }));
    const grading = {
      width: Object.fromEntries(sizes.map(({ id }, index) => [id, 98 + 10 * index])),
      height: Object.fromEntries(sizes.map(({ id }) => [id, 100])),
    };
    const feels = (id: string, size: string, scale: 0 | -1) => reader(id, {}, { size, fit: [{ area: "bust", scale }] });
    const testers = [
      ...["t1", "t2", "t3"].map((id) => feels(id, "a", 0)),
      ...["t4", "t5"].map((id) => feels(id, "b", -1)),
      ...["t6", "t7", "t8", "t9"].map((id) => feels(id, "c", -1)),
    ];
    const places = Object.fromEntries(sizes.map(({ id }) => [id, { least: 1, wanted: 2 }]));
    const call = callDocument(testers, { pattern: patternDocument({ sizes, grading }), places });
    const cells = gaps(call).cells.map((cell) => (cell.size === "b" ? { ...cell, verdict: "off" as const } : cell));
    // Left are a, which feels as wished, and c, all four of which are tight; nobody answered in d.
    expect(fitFindings(call, cells)).toEqual([
      { measurement: "bust", area: "bust", feels: "tight", from: "c", to: "d", agree: 4, testers: 4 },
    ]);
  });

  it("says nothing where testers differ, or where the size itself is off", () => {
    const mixed = callDocument(feeling("large", [-1, 0, 1, 0, -1]));
    expect(fitFindings(mixed, gaps(mixed).cells)).toEqual([]);
    const tight = callDocument(feeling("large", [-1, -2, -1, -1, -1]));
    const off = gaps(tight).cells.map((cell) => ({ ...cell, verdict: "off" as const }));
    expect(fitFindings(tight, off)).toEqual([]);
  });
});
