import { expect, it } from "vitest";
import { gradingWarnings } from "@/engine/pattern";
import { patternDocument } from "../../factories/pattern";

it("warns where a hand-made grading breaks a repeat, a least value, an order or a sum, each at its place", () => {
  const [width, height] = patternDocument().counts;
  if (width === undefined || height === undefined) throw new Error("incomplete pattern");
  const pattern = patternDocument({
    counts: [
      { ...width, repeat: { of: 10, plus: 3 }, least: 100 },
      { ...height, mayShrink: true },
    ],
    ties: [{ count: "width", equals: [{ times: 1, count: "height" }], within: 2 }],
    grading: { width: { small: 103, large: 98 }, height: { small: 105, large: 90 } },
  });
  expect(gradingWarnings(pattern)).toEqual([
    { path: "grading.width.large", says: "98 is not a multiple of 10 plus 3." },
    { path: "grading.width.large", says: "98 is below the least value, 100." },
    { path: "grading.width.large", says: "98 is less than the 103 of the next smaller size." },
    { path: "ties[0]", says: "in L, 98 and 90 must add up and do not." },
  ]);
  expect(gradingWarnings(patternDocument())).toEqual([]);
});
