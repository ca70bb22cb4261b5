import { expect, it } from "vitest";
import { compareTool } from "@/engine/trade-tables";

it("says what is usual at a gauge, and does not mention a size that is usual", () => {
  const compared = compareTool({ craft: "knitting", stitchesOver10cm: 18, toolMm: 5 });
  expect(compared?.isUsual).toBe(true);
  expect(compared?.message).toBe(
    "Usual: for 16–20 stitches of stocking stitch a 4.5–5.5 mm needle (Medium). A starting point to check.",
  );
});

it("names every class that a crochet gauge can be, and a tool that is none of theirs", () => {
  const compared = compareTool({ craft: "crochet", stitchesOver10cm: 16.5, toolMm: 3 });
  expect(compared?.isUsual).toBe(false);
  expect(compared?.message).toBe(
    "Usual: for 16–20 stitches of single crochet (US) a 3.5–4.5 mm hook (Fine); for 12–17 stitches of single crochet (US) a 4.5–5.5 mm hook (Light). A starting point to check. Yours is 3 mm, which may be meant.",
  );
});

it("accepts either kind of hook for lace, and open-ended bands", () => {
  expect(compareTool({ craft: "crochet", stitchesOver10cm: 36, toolMm: 1.5 })?.isUsual).toBe(true);
  expect(compareTool({ craft: "crochet", stitchesOver10cm: 36, toolMm: 2 })?.isUsual).toBe(false);
  expect(compareTool({ craft: "knitting", stitchesOver10cm: 4, toolMm: 25 })?.isUsual).toBe(true);
});

it("is silent for a gauge that the table does not reach", () => {
  expect(compareTool({ craft: "knitting", stitchesOver10cm: 60, toolMm: 1 })).toBeNull();
});
