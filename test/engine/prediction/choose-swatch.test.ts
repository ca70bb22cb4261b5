import { describe, expect, it } from "vitest";
import { chooseSwatch } from "@/engine/prediction";
import { swatch } from "../../factories/pattern";

describe("of several swatches of a fabric", () => {
  const first = swatch({ stitches: 18, washed: true });
  const unwashedLast = swatch({ stitches: 19, washed: false });

  it("the one marked used counts", () => {
    const used = swatch({ stitches: 21, washed: false, used: true });
    expect(chooseSwatch([used, swatch({ on: "garment" }), first], "main")).toBe(used);
  });

  it("otherwise one measured on the garment", () => {
    const onGarment = swatch({ stitches: 22, on: "garment", washed: false });
    expect(chooseSwatch([onGarment, first], "main")).toBe(onGarment);
  });

  it("else the last washed one, else the last", () => {
    const second = swatch({ stitches: 18.5 });
    expect(chooseSwatch([first, second, unwashedLast], "main")).toBe(second);
    expect(chooseSwatch([swatch({ washed: false }), unwashedLast], "main")).toBe(unwashedLast);
  });

  it("but never one that is set aside, and none where no other is left", () => {
    const setAside = swatch({ used: true, decision: "set-aside" });
    expect(chooseSwatch([setAside, first], "main")).toBe(first);
    expect(chooseSwatch([setAside], "main")).toBeUndefined();
    expect(chooseSwatch([first], "other")).toBeUndefined();
  });
});
