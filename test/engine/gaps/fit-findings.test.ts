import { describe, expect, it } from "vitest";
import { fitFindings, gaps } from "@/engine/gaps";
import type { Tester } from "@/engine/pattern";
import { callDocument, reader } from "../../factories/call";

/** Testers on size whose bust feels so, −2 tight to 2 loose. */
function feeling(size: "small" | "large", scales: readonly (-2 | -1 | 0 | 1 | 2)[]): Tester[] {
  const bust = size === "small" ? 100 : 120;
  return scales.map((scale, at) => reader(`${size}-${at}`, { bust }, { size, fit: [{ area: "bust", scale }] }));
}

describe("fit beside the gap", { timeout: 60_000 }, () => {
  it("finds the sizes that are on size and yet tight", () => {
    // By hand: 4 of 5 by chance at one in three: 5·(1/3)⁴·(2/3) + (1/3)⁵ = 11/243, under one in twenty.
    const call = callDocument([...feeling("small", [0, 0, 0, 1]), ...feeling("large", [-1, -2, -1, 0, -1])]);
    expect(fitFindings(call, gaps(call).cells)).toEqual([
      { measurement: "bust", area: "bust", feels: "tight", from: "large", to: "large", agree: 4, testers: 5 },
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
