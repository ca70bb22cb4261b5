import { describe, expect, it } from "vitest";
import type { Outlier } from "@/engine/gaps";
import { flaggedItems } from "@/engine/results";
import { doubtWords, itemWords, standingWords } from "@/features/analyses/doubtful-words";
import { itemKey, madeDecision } from "@/features/analyses/decision-words";
import { callDocument, reader } from "../../factories/call";

const HALF: Outlier = {
  tester: "ann",
  what: "reading",
  id: "bust",
  value: 50,
  slip: "half-girth",
  wouldBe: 100,
  setAside: true,
};

const call = callDocument([
  reader("ann", { bust: 50, length: 40 }),
  reader("bea", {}, { readings: [{ measurement: "length", cm: 47, decision: "set-aside" }] }),
  reader("cat", {}, { readings: [{ measurement: "bust", cm: 130, decision: "keep" }] }),
]);

describe("what is doubted in a call", () => {
  const items = flaggedItems(call.testers, [HALF]);

  it("is what the engine doubts and what people decided, first what does not count", () => {
    expect(items.map(({ tester, of, counts }) => [tester, of, counts])).toEqual([
      ["ann", "bust", false],
      ["bea", "length", false],
      ["cat", "bust", true],
    ]);
  });

  it("says what she gave, what is odd, and by whom it was set aside or kept", () => {
    const [half, long, wide] = items;
    if (!half || !long || !wide) throw new Error("three items are doubted");
    expect(itemWords(half, call.pattern, "cm")).toMatch(/: 50\.0 cm$/);
    expect(doubtWords(half, "cm")).toBe("Looks like half the girth: laid flat and not doubled; it would be 100.0 cm.");
    const at = new Date("2026-11-03T10:00:00Z");
    const decisions = new Map([
      [itemKey(long), { decision: "set-aside", by: "Ana", at }],
      [itemKey(wide), { decision: "keep", by: null, at: null }],
    ] as const);
    expect(items.map((item) => standingWords(item, madeDecision(decisions, item)))).toEqual([
      "Set aside by Sizewright: it does not count.",
      "Set aside by Ana, 3 November 2026: it does not count.",
      "Put back by one of you: it counts.",
    ]);
    // Decided otherwise since the analysis, which is then being updated.
    const since = new Map([[itemKey(long), { decision: "keep", by: "Ana", at }]] as const);
    expect(standingWords(long, madeDecision(since, long))).toBe("Set aside by one of you: it does not count.");
    expect(doubtWords(long, "cm")).toBe("Sizewright finds nothing odd about it.");
  });

  it("counts again where a person puts back what the engine set aside", () => {
    const kept = callDocument([reader("ann", {}, { readings: [{ measurement: "bust", cm: 50, decision: "keep" }] })]);
    expect(flaggedItems(kept.testers, [{ ...HALF, setAside: false }])).toMatchObject([
      { counts: true, decision: "keep", suspect: { slip: "half-girth" } },
    ]);
  });
});
