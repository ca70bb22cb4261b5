import { describe, expect, it } from "vitest";
import type { Outlier } from "../../../../src/engine/gaps";
import { flaggedItems } from "../../../../src/engine/results";
import { doubtWords, itemWords, standingWords } from "../../../../src/features/results/mistakes/mistakes-copy";
import { mistakesCsv } from "../../../../src/features/results/mistakes/mistakes-csv";
import { itemKey, madeDecision } from "../../../../src/features/results/mistakes/decision-copy";
import { callDocument, reader } from "../../../factories/call";

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

describe("possible mistakes in a call", () => {
  const items = flaggedItems(call.testers, [HALF]);

  it("lists what the engine flags and what people decided, excluded items first", () => {
    expect(items.map(({ tester, of, counts }) => [tester, of, counts])).toEqual([
      ["ann", "bust", false],
      ["bea", "length", false],
      ["cat", "bust", true],
    ]);
  });

  it("states what was reported, what looks wrong, and who excluded or included it", () => {
    const [half, long, wide] = items;
    if (!half || !long || !wide) throw new Error("three items are doubted");
    expect(itemWords(half, call.pattern, "cm")).toMatch(/: 50\.0 cm$/);
    expect(doubtWords(half, "cm")).toBe(
      "Looks like half the girth (measured flat and not doubled); it would be 100.0 cm.",
    );
    const at = new Date("2026-11-03T10:00:00Z");
    const decisions = new Map([
      [itemKey(long), { decision: "set-aside", reason: "", by: "Ana", at }],
      [itemKey(wide), { decision: "keep", reason: "", by: null, at: null }],
    ] as const);
    expect(items.map((item) => standingWords(item, madeDecision(decisions, item), "cm"))).toEqual([
      "Excluded automatically.",
      "Excluded by Ana, 3 November 2026.",
      "Included by one of you.",
    ]);
    // Decided otherwise since the analysis, which is then being updated.
    const since = new Map([[itemKey(long), { decision: "keep", reason: "", by: "Ana", at }]] as const);
    expect(standingWords(long, madeDecision(since, long), "cm")).toBe("Excluded by one of you.");
    expect(doubtWords(long, "cm")).toBe("Nothing unusual found.");
  });

  it("states what was reported, and the value that is used instead, with who uses it, when and why", () => {
    const used = callDocument([
      reader("ann", {}, { readings: [{ measurement: "bust", cm: 50, decision: { use: 100 } }] }),
    ]);
    const [item] = flaggedItems(used.testers, []);
    if (!item) throw new Error("one item is decided on");
    const at = new Date("2026-11-03T10:00:00Z");
    const made = { decision: { use: 100 }, reason: "measured flat", by: "Ana", at };
    expect(itemWords(item, used.pattern, "cm")).toMatch(/: 50\.0 cm$/);
    expect(standingWords(item, madeDecision(new Map([[itemKey(item), made]]), item), "cm")).toBe(
      "100.0 cm is used instead, by Ana, 3 November 2026: “measured flat”.",
    );
    // Another value has been used since the analysis.
    const since = new Map([[itemKey(item), { ...made, decision: { use: 99 } }]]);
    expect(standingWords(item, madeDecision(since, item), "in")).toBe("39 3/8 in is used instead, by one of you.");
    const csv = mistakesCsv([item], {
      ...{ pattern: used.pattern, names: new Map(), unit: "cm" as const },
      decisions: new Map([[itemKey(item), made]]),
    });
    expect(csv).toContain("value used (cm)");
    expect(csv).toMatch(/: 50\.0 cm,.*,100$/);
  });

  it("counts an item again when a person includes what the engine excluded", () => {
    const kept = callDocument([reader("ann", {}, { readings: [{ measurement: "bust", cm: 50, decision: "keep" }] })]);
    expect(flaggedItems(kept.testers, [{ ...HALF, setAside: false }])).toMatchObject([
      { counts: true, decision: "keep", suspect: { slip: "half-girth" } },
    ]);
  });
});
