import { expect, it } from "vitest";
import { lengthCell } from "@/ui/format-length";

it("gives spreadsheets lengths to 0.1 cm or 1/8 in, by the reader's unit, as numbers", () => {
  expect([98.04, -2.56, -0.04, 0, null].map((cm) => lengthCell(cm, "cm"))).toEqual([98, -2.6, 0, 0, ""]);
  // By hand: 98.04 ÷ 2.54 = 38.598 is nearest to 38 5/8; 2.56 ÷ 2.54 = 1.008 to 1; 0.1 ÷ 2.54 = 0.039 to 0.
  expect([98.04, -2.56, -0.1, null].map((cm) => lengthCell(cm, "in"))).toEqual([38.625, -1, 0, ""]);
});
