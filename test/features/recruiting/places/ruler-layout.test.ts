import { describe, expect, it } from "vitest";
import { rulerLayout, type RulerPerson, type RulerSize } from "@/features/recruiting/places/components/ruler-layout";

const size = (id: string, index: number): RulerSize => ({
  ...{ id, label: id, index, from: index - 8, to: index + 8 },
  ...{ filled: 0, wanted: 2, isShort: false },
});
const SIZES = [size("S", 86), size("M", 94), size("L", 102), size("XL", 112)];
const crowd = (count: number): RulerPerson[] =>
  Array.from({ length: count }, (_, index) => ({
    ...{ key: String(index), name: `N${index}`, mark: "placed" as const, size: "M" },
    index: 80 + ((index * 7919) % 41),
  }));

describe("the ruler of bodies", () => {
  it.each([0, 1, 10, 30])("with %i people none of their heads covers another", (count) => {
    const layout = rulerLayout(SIZES, crowd(count));
    expect(layout.hasInitials).toBe(true);
    const heads = layout.people.map(({ index, y }) => ({ x: (layout.x(index) * layout.leastWidthPx) / 100, y }));
    heads.forEach((one, index) => {
      for (const other of heads.slice(index + 1))
        expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(18);
    });
  });

  it("stays low with 300 people, all above the axis and below the sizes", () => {
    const layout = rulerLayout(SIZES, crowd(300));
    expect(layout.heightPx).toBeLessThan(600);
    for (const { y } of layout.people) {
      expect(y).toBeLessThan(layout.axisY);
      expect(y).toBeGreaterThan(layout.railY);
    }
  });

  it("draws reaches that overlap in lanes of their own", () => {
    const { sizes } = rulerLayout(SIZES, []);
    for (const [index, one] of sizes.entries())
      for (const other of sizes.slice(index + 1))
        if (other.from <= one.to && one.from <= other.to) expect(one.reachY).not.toBe(other.reachY);
  });

  it("keeps everybody on it, also far beyond the sizes", () => {
    const layout = rulerLayout(SIZES, [{ key: "1", name: "Ann", index: 190, mark: "waiting", size: null }]);
    expect(layout.x(190)).toBeLessThanOrEqual(100);
    expect(layout.x(86)).toBeGreaterThanOrEqual(0);
  });
});
