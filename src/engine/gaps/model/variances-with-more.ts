import { at, cholesky, rowProducts, solveLower, squareProduct, transposed } from "../../linear-algebra";

/** Numbers of further testers that are worked out; those between are interpolated (docs/method.md#how-many-testers). */
const WORKED_OUT = [0, 1, 2, 3, 5, 8, 13, 20, 30] as const;

/**
 * Variances of a size's cells now, and once more testers of that size have reported all measurements.
 *
 * New information on a group of cells changes their covariance C to C − C·S(I + SᵀC·S)⁻¹SᵀC with S·Sᵀ = the information.
 *
 * @param covariance of the size's cells now, cell i and j at `i * cells + j`.
 * @param perTester the information of one tester's readings: a precision matrix, in the same order.
 * @returns variances of the cells with 0, 1, 2, … more testers, thirty at most; none where a number is not finite.
 */
export function variancesWithMore(covariance: Float64Array, perTester: Float64Array): Float64Array[] {
  const cells = Math.round(Math.sqrt(covariance.length));
  const root = cholesky({ rows: cells, columns: cells, values: perTester });
  if (root === null) return [];
  const covarianceRoot = squareProduct(covariance, root.values, cells);
  const across = transposed(covarianceRoot, cells);
  const inner = rowProducts(transposed(root.values, cells), across, cells);
  const now = Float64Array.from({ length: cells }, (_, cell) => at(covariance, cell * cells + cell));
  const workedOut = WORKED_OUT.map((more) =>
    more === 0 ? now : variancesAfter({ covariance, across, inner, cells, share: 1 / more }),
  );
  return filledIn(workedOut);
}

/** The numbers of testers between those that are worked out: what the testers between add to the precision is shared evenly. */
function filledIn(workedOut: readonly Float64Array[]): Float64Array[] {
  return WORKED_OUT.flatMap((more, index) => {
    const [from, to] = [workedOut[index - 1], workedOut[index]];
    if (to === undefined) return [];
    const before = WORKED_OUT[index - 1];
    if (from === undefined || before === undefined) return [to];
    return Array.from({ length: more - before }, (_, step) => {
      const share = (step + 1) / (more - before);
      return from.map((variance, cell) => 1 / ((1 - share) / variance + share / at(to, cell)));
    });
  });
}

function variancesAfter(given: {
  covariance: Float64Array;
  /** Transposed product of the covariance and the information's root. */
  across: Float64Array;
  inner: Float64Array;
  cells: number;
  share: number;
}): Float64Array {
  const { covariance, across, inner, cells, share } = given;
  const values = inner.slice();
  for (let i = 0; i < cells; i += 1) values[i * cells + i] = at(values, i * cells + i) + share;
  const factor = cholesky({ rows: cells, columns: cells, values });
  const variances = new Float64Array(cells).fill(Number.NaN);
  if (factor === null) return variances;
  const solved = across.slice();
  solveLower(factor, solved, cells);
  for (let cell = 0; cell < cells; cell += 1) {
    let variance = at(covariance, cell * cells + cell);
    for (let row = 0; row < cells; row += 1) variance -= at(solved, row * cells + cell) ** 2;
    variances[cell] = Math.max(0, variance);
  }
  return variances;
}
