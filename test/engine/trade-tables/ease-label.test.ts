import { expect, it } from "vitest";
import { EASE_CHART, easeLabel } from "@/engine/trade-tables";

/*
 * Ease and fit chart of the Craft Yarn Council, from memory: body size or less; 1–2 in (2.5–5 cm); 2–4 in (5–10 cm);
 * 4–6 in (10–15 cm); 6 in (15 cm) or more. Ends that two bands share are ours to decide: they belong to the looser word.
 */
it.each([
  [-10, "very close fitting"],
  [0, "very close fitting"],
  [1, "close fitting"],
  [2.5, "close fitting"],
  [4.9, "close fitting"],
  [5, "standard fit"],
  [2 * 2.54, "standard fit"],
  [9.9, "standard fit"],
  [10, "loose fit"],
  [4 * 2.54, "loose fit"],
  [14.9, "loose fit"],
  [15, "oversized"],
  [6 * 2.54, "oversized"],
  [40, "oversized"],
] as const)("calls an ease of %s cm %s", (easeCm, word) => {
  expect(easeLabel(easeCm)).toBe(word);
});

it("takes what the computer’s rounding makes of 5 cm for 5 cm", () => {
  expect(easeLabel(0.1 + 0.2 + 4.7)).toBe("standard fit");
  expect(easeLabel(90.1 + 5 - 90.1)).toBe("standard fit");
});

it("says that the chart is recalled", () => {
  expect(EASE_CHART.mark).toBe("memory");
});
