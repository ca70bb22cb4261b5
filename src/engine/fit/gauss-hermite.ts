import { at } from "../linear-algebra";

/** Points and weights with Σ weight · f(point) ≈ the mean of f over a standard normal value. */
export interface Quadrature {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

const MAX_STEPS = 100;
const TOLERANCE = 1e-14;

/**
 * Gauss–Hermite quadrature for the standard normal distribution, exact for polynomials of degree below 2·`count`.
 *
 * @param count of points, 1 to 40.
 * @returns points in descending order.
 * @see Press et al., Numerical Recipes (3rd ed.), 4.6.1, for the starting values; Abramowitz & Stegun, 25.4.46.
 */
export function gaussHermite(count: number): Quadrature {
  const roots = new Float64Array(count);
  const weights = new Float64Array(count);
  let root = 0;
  for (let i = 0; i < (count + 1) >> 1; i += 1) {
    root = startOfRoot(i, { count, root, roots });
    let slope = 1;
    for (let step = 0; step < MAX_STEPS; step += 1) {
      const { value, before } = hermite(count, root);
      slope = Math.sqrt(2 * count) * before;
      const change = value / slope;
      root -= change;
      if (Math.abs(change) <= TOLERANCE) break;
    }
    const mirrored = count - 1 - i;
    roots[i] = root;
    roots[mirrored] = mirrored === i ? 0 : -root;
    weights[i] = 2 / (slope * slope);
    weights[mirrored] = at(weights, i);
  }
  return {
    points: roots.map((value) => Math.SQRT2 * value),
    weights: weights.map((weight) => weight / Math.sqrt(Math.PI)),
  };
}

interface Search {
  readonly count: number;
  /** The root before. */
  readonly root: number;
  readonly roots: Float64Array;
}

function startOfRoot(i: number, { count, root, roots }: Search): number {
  switch (i) {
    case 0:
      return Math.sqrt(2 * count + 1) - 1.85575 * (2 * count + 1) ** (-1 / 6);
    case 1:
      return root - (1.14 * count ** 0.426) / root;
    case 2:
      return 1.86 * root - 0.86 * at(roots, 0);
    case 3:
      return 1.91 * root - 0.91 * at(roots, 1);
    default:
      return 2 * root - at(roots, i - 2);
  }
}

/** The orthonormal Hermite polynomial of this degree, and the one before it. */
function hermite(degree: number, x: number): { readonly value: number; readonly before: number } {
  let value = Math.PI ** -0.25;
  let before = 0;
  for (let j = 1; j <= degree; j += 1) {
    [value, before] = [x * Math.sqrt(2 / j) * value - Math.sqrt((j - 1) / j) * before, value];
  }
  return { value, before };
}
