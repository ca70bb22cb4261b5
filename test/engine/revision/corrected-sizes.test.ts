import { expect, it } from "vitest";
import { correctedSizes } from "@/engine/revision";
import { patternDocument } from "../../factories/pattern";

const before = patternDocument();

it("a size is corrected where its counts change or its text is put right, with the measurements that have them", () => {
  const after = patternDocument({
    grading: { width: { small: 98, large: 120 }, height: { small: 100, large: 110 } },
  });
  expect(correctedSizes({ before, after, textFixes: [] })).toEqual([{ size: "large", measurements: ["bust"] }]);
  const textFixes = [{ count: "height", size: "small" }];
  expect(correctedSizes({ before, after, textFixes })).toEqual([
    { size: "small", measurements: ["length"] },
    { size: "large", measurements: ["bust"] },
  ]);
});

it("what only changes the published measurements corrects no size, nor does a size or a count that is new", () => {
  const allowances = before.allowances.map((allowance) => ({ ...allowance, cm: 2 }));
  expect(correctedSizes({ before, after: { ...before, allowances }, textFixes: [] })).toEqual([]);
  const [small] = before.sizes;
  if (small === undefined) throw new Error("no size");
  const grown = {
    ...before,
    sizes: [...before.sizes, { ...small, id: "huge", label: "XL" }],
    grading: { width: { small: 98, large: 118, huge: 140 }, height: { small: 100, large: 110, huge: 112 } },
  };
  expect(correctedSizes({ before, after: grown, textFixes: [] })).toEqual([]);
});
