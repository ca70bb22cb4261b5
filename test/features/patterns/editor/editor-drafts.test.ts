import { describe, expect, it } from "vitest";
import type { DraftPattern } from "../../../../src/engine/editing";
import { withNewBody, withoutBody, withPastedBodies } from "../../../../src/features/patterns/editor/body-rows";
import { cmItems, withPastedCm } from "../../../../src/features/patterns/editor/cm-list";
import { pastedBlock } from "../../../../src/features/patterns/editor/grid-area";
import { joinSign, retyped, splitSign } from "../../../../src/features/patterns/editor/signed";
import { withPublishedSizes } from "../../../../src/features/patterns/editor/with-published-sizes";
import { saltmarshPattern } from "../../../../prisma/demo/saltmarsh-pattern";

describe("what an allowance adds or takes", () => {
  it("is a word and a number without its sign, and comes together again", () => {
    expect(splitSign(-2)).toEqual({ takes: true, amount: 2 });
    expect(splitSign("−1,5")).toEqual({ takes: true, amount: "1,5" });
    expect(splitSign("+1")).toEqual({ takes: false, amount: "1" });
    expect(joinSign({ takes: true, amount: "12 3/8 in" })).toBe("-12 3/8 in");
    expect(joinSign({ takes: true, amount: 0 })).toBe(0);
  });

  it("is turned round by a minus typed by hand", () => {
    expect(retyped("-3", false)).toBe("-3");
    expect(retyped("-3", true)).toBe("3");
    expect(retyped("3", true)).toBe("-3");
  });
});

describe("body measurements of a draft", () => {
  it("take pasted cells from a cell on, and leave out a blank one and what lies outside", () => {
    const block = [
      ["150", "160", "170"],
      ["47,5", " "],
    ];
    const { sizes } = withPastedBodies(saltmarshPattern, block, { row: 0, column: 7 });
    expect(sizes[6]?.body).toEqual({ bust: 132, "upper-arm": 41.5 });
    expect(sizes[7]?.body).toEqual({ bust: "150", "upper-arm": "47,5" });
    expect(sizes[8]?.body).toEqual({ bust: "160" });
  });

  it("leave no size ordered by one that is taken out, and the next one orders them", () => {
    const without = withoutBody(saltmarshPattern, "bust");
    expect(without.sizeBy).toBe("");
    expect(without.sizes.every(({ body }) => body["bust"] === undefined)).toBe(true);
    expect(withNewBody(without, "Chest").sizeBy).toBe("chest");
  });
});

it.each([
  ["a column with decimal commas", "162\r\n51,5\r\n", [["162"], ["51,5"]]],
  ["one number with a decimal comma", "51,5", [["51,5"]]],
  ["a column with an empty cell", "162\n\n51,5", [["162"], [""], ["51,5"]]],
  [
    "cells parted by tabs",
    "78,5\t86\n25\t27,5",
    [
      ["78,5", "86"],
      ["25", "27,5"],
    ],
  ],
  ["numbers parted by commas", "78,86,94", [["78", "86", "94"]]],
])("what is pasted into a table is read as cells: %s", (_, text, cells) => {
  expect(pastedBlock(text)).toEqual(cells);
});

it("cells pasted side by side into an allowance for all sizes become one in each", () => {
  const [band, seam] = cmItems(
    withPastedCm(saltmarshPattern, "allowances", { block: [["-2", "-2.5"], ["1"]], row: 0, column: 1 }),
    "allowances",
  );
  expect(band?.cm).toMatchObject({ "size-xs": -2, "size-s": "-2", "size-m": "-2.5", "size-l": -2 });
  expect(seam?.cm).toBe("1");
});

it("sizes of a published table keep the numbers of a size with the same label, and drop those of the others", () => {
  const pattern: DraftPattern = {
    ...saltmarshPattern,
    allowances: [
      { id: "edge", label: "Edge", cm: Object.fromEntries(saltmarshPattern.sizes.map(({ id }) => [id, 1])) },
    ],
  };
  const ready = {
    bodyMeasurements: [{ id: "hip", label: "Hip", how: "" }],
    sizes: [
      { id: "m-of-table", label: "M", body: { hip: 100 } },
      { id: "new", label: "6X", body: { hip: 160 } },
    ],
    sizeBy: "hip",
  };
  const filled = withPublishedSizes(pattern, ready);
  expect(filled.sizes).toEqual([
    { id: "size-m", label: "M", body: { bust: 94, "upper-arm": 29, hip: 100 } },
    { id: "new", label: "6X", body: { hip: 160 } },
  ]);
  expect(filled.allowances).toEqual([{ id: "edge", label: "Edge", cm: { "size-m": 1 } }]);
  expect(filled.bodyMeasurements?.map(({ id }) => id)).toEqual(["bust", "upper-arm", "hip"]);
});
