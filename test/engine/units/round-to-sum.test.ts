import fc from "fast-check";
import { expect, it } from "vitest";
import { roundToSum } from "@/engine/units";

it("gives the missing tenth to the largest remainder", () => {
  // By hand: 1.04 + 1.04 + 1.02 is 3.10; tenths alone would show 1.0 + 1.0 + 1.0.
  expect(roundToSum([1.04, 1.04, 1.02], 0.1).map((part) => part.toFixed(1))).toEqual(["1.1", "1.0", "1.0"]);
});

it("adds up as shown, each part less than a step from its number", () => {
  const parts = fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(parts, fc.constantFrom(0.1, 0.125, 0.5), (numbers, step) => {
      const rounded = roundToSum(numbers, step);
      const total = numbers.reduce((sum, part) => sum + part, 0);
      const shown = rounded.reduce((sum, part) => sum + part, 0);
      expect(Math.abs(shown - Math.round(total / step) * step)).toBeLessThan(1e-6);
      rounded.forEach((part, index) => expect(Math.abs(part - (numbers[index] ?? 0))).toBeLessThan(step + 1e-9));
    }),
  );
});
