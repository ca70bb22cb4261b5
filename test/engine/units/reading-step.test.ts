import { expect, it } from "vitest";
import { readingStep } from "@/engine/units";

it.each([
  [14, 1],
  [14.5, 0.5],
  [14.25, 0.25],
  [14.75, 0.25],
  [14.125, 0.125],
  [14.3, 0.1],
  [14.33, 0.01],
])("a count of %d was read in steps of %d", (count, step) => {
  expect(readingStep(count)).toBe(step);
});
