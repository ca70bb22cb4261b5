import fc from "fast-check";
import { expect, it } from "vitest";
import { canonicalJson, isSameJson } from "@/engine/pattern";

it("says of two values what their canonical texts say", () => {
  let same = 0;
  // Few keys and values, so that equal pairs come often.
  const { value } = fc.letrec<{ value: unknown }>((tie) => ({
    value: fc.oneof(
      { maxDepth: 3 },
      fc.constantFrom(0, 1, "a", null, true),
      fc.array(tie("value"), { maxLength: 2 }),
      fc.dictionary(fc.constantFrom("a", "b"), tie("value"), { maxKeys: 2 }),
    ),
  }));
  fc.assert(
    fc.property(value, value, (left, right) => {
      const expected = canonicalJson(left) === canonicalJson(right);
      if (expected) same += 1;
      expect(isSameJson(left, right)).toBe(expected);
      expect(isSameJson(left, structuredClone(left))).toBe(true);
    }),
    { numRuns: 2_000 },
  );
  expect(same).toBeGreaterThan(20);
});

it("takes the order of keys and a member that is undefined for nothing", () => {
  expect(isSameJson({ a: 1, b: { c: [1] } }, { b: { c: [1], d: undefined }, a: 1 })).toBe(true);
  expect(isSameJson({ a: 1 }, { a: 1, b: null })).toBe(false);
  expect(isSameJson([1, 2], [2, 1])).toBe(false);
  expect(isSameJson([], {})).toBe(false);
});
