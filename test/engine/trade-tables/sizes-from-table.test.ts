import fc from "fast-check";
import { expect, it } from "vitest";
import { parsePattern } from "@/engine/pattern";
import { BODY_TABLES, RANGE_POINTS, sizesFromTable, type BodyTable } from "@/engine/trade-tables";
import { patternDocument } from "../../factories/pattern";

function table(id: string): BodyTable {
  const found = BODY_TABLES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no table ${id}`);
  return found;
}

it("selects sizes and measurements in the table’s order, including the one that orders them", () => {
  const choice = { sizes: ["size-m", "size-s"], measurements: ["upper-arm"] };
  const { sizes, bodyMeasurements, sizeBy } = sizesFromTable(table("cyc-woman"), choice);
  expect(sizeBy).toBe("bust");
  expect(bodyMeasurements.map(({ id }) => id)).toEqual(["bust", "upper-arm"]);
  // By hand: the middles of 32–34 and 36–38 in are 33 and 37 in; the arms 10.25 and 11 in.
  expect(sizes).toEqual([
    { id: "size-s", label: "S", body: { bust: 33 * 2.54, "upper-arm": 10.25 * 2.54 } },
    { id: "size-m", label: "M", body: { bust: 37 * 2.54, "upper-arm": 11 * 2.54 } },
  ]);
});

it("uses the requested point of a range, the middle by default", () => {
  const bust = (ofRange?: "low" | "high") =>
    sizesFromTable(table("en-13402-letters"), { sizes: ["size-m"], ...(ofRange ? { ofRange } : {}) }).sizes[0]?.body[
      "bust"
    ];
  expect([bust("low"), bust(), bust("high")]).toEqual([90, 94, 98]);
});

it("throws for what the table does not have", () => {
  const { size, arm } = { size: { sizes: ["size-9x"] }, arm: { measurements: ["tail"] } };
  expect(() => sizesFromTable(table("cyc-woman"), size)).toThrow(RangeError);
  expect(() => sizesFromTable(table("cyc-woman"), arm)).toThrow(RangeError);
  expect(() => sizesFromTable(table("cyc-woman"), { sizes: [] })).toThrow(RangeError);
});

it("makes of any choice of any table a pattern that parses, its sizes rising", () => {
  let tried = 0;
  const choices = fc.constantFrom(...BODY_TABLES).chain((one) =>
    fc.record({
      table: fc.constant(one),
      sizes: fc.subarray(
        one.sizes.map(({ id }) => id),
        { minLength: 1 },
      ),
      measurements: fc.subarray(one.rows.map(({ measurement }) => measurement.id)),
      ofRange: fc.constantFrom(...RANGE_POINTS),
    }),
  );
  fc.assert(
    fc.property(choices, ({ table: one, ...choice }) => {
      tried += 1;
      const taken = sizesFromTable(one, choice);
      const pattern = { ...patternDocument({ counts: [], measurements: [], grading: {} }), ...taken };
      expect(parsePattern(pattern)).toMatchObject({ ok: true });
      const bodies = taken.sizes.map(({ body }) => body[taken.sizeBy] ?? 0);
      expect(bodies).toEqual(bodies.toSorted((left, right) => left - right));
      expect(new Set(bodies).size).toBe(choice.sizes.length);
      for (const { body } of taken.sizes) expect(Object.keys(body)).toHaveLength(taken.bodyMeasurements.length);
    }),
  );
  expect(tried).toBe(100);
});
