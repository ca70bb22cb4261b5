import { describe, expect, it } from "vitest";
import { gaussHermite } from "@/engine/fit";

describe("Gauss–Hermite quadrature of the standard normal", () => {
  it("has the three points that can be found by hand", () => {
    const { points, weights } = gaussHermite(3);
    [Math.sqrt(3), 0, -Math.sqrt(3)].forEach((point, q) => expect(points[q]).toBeCloseTo(point, 13));
    [1 / 6, 2 / 3, 1 / 6].forEach((weight, q) => expect(weights[q]).toBeCloseTo(weight, 13));
  });

  it.each([1, 2, 5, 9, 15, 30])("has the normal's moments, as far as %i points can", (count) => {
    const { points, weights } = gaussHermite(count);
    // 1, 1, 3, 15, 105: products of odd numbers.
    let expected = 1;
    for (let half = 0; half < Math.min(count, 5); half += 1) {
      const moment = points.reduce((sum, point, q) => sum + (weights[q] ?? NaN) * point ** (2 * half), 0);
      expect(moment / expected).toBeCloseTo(1, 10);
      expected *= 2 * half + 1;
    }
  });
});
