import {
  at,
  cholesky,
  logDeterminant,
  rowProducts,
  solveLower,
  symmetricRowProducts,
  transposed,
} from "../linear-algebra";

/** A symmetric matrix diag(own) − sharedᵀ·shared; row k of `shared` stands at `k * own.length`. */
export interface LowRank {
  readonly own: Float64Array;
  readonly shared: Float64Array;
}

/**
 * P = (I + cΛ)⁻¹Λ of a Λ = diag(d) − HᵀH: diag(d ÷ (1 + cd)) − WᵀW with W = L⁻¹H·diag(1 ÷ (1 + cd)), L the Cholesky factor of
 * I − cH·diag(1 ÷ (1 + cd))·Hᵀ. Exact for any c from 0 on.
 *
 * @returns P, and log|I + cΛ|; null where a number is not finite.
 * @see Golub & Van Loan, Matrix Computations (4th ed.), 2.1.4 for Woodbury's identity.
 */
export function integratedLowRank(
  { own, shared }: LowRank,
  c: number,
): (LowRank & { readonly logDeterminant: number }) | null {
  const cells = own.length;
  const rank = shared.length / cells;
  const kept = own.map((information) => 1 / (1 + c * information));
  const scaled = shared.slice();
  const moved = shared.slice();
  for (let k = 0; k < shared.length; k += 1) {
    const share = at(kept, k % cells);
    scaled[k] = at(scaled, k) * Math.sqrt(c * share);
    moved[k] = at(moved, k) * share;
  }
  const inner = symmetricRowProducts(scaled, scaled, { columns: cells });
  for (let k = 0; k < inner.length; k += 1) inner[k] = -at(inner, k);
  for (let k = 0; k < rank; k += 1) inner[k * rank + k] = at(inner, k * rank + k) + 1;
  const factor = cholesky({ rows: rank, columns: rank, values: inner });
  if (factor === null) return null;
  solveLower(factor, moved, cells);
  let sum = logDeterminant(factor);
  for (const share of kept) sum -= Math.log(share);
  return { own: own.map((information, cell) => information * at(kept, cell)), shared: moved, logDeterminant: sum };
}

/** The whole matrix, entry (i, j) at `i * size + j`. */
export function filled({ own, shared }: LowRank): Float64Array {
  const size = own.length;
  const columns = shared.length / size;
  const across = transposed(shared, size);
  const values = symmetricRowProducts(across, across, { columns });
  for (let k = 0; k < values.length; k += 1) values[k] = -at(values, k);
  for (let i = 0; i < size; i += 1) values[i * size + i] = at(values, i * size + i) + at(own, i);
  return values;
}

/** matrix·(diag(own) − sharedᵀ·shared), both square. */
export function timesLowRank(matrix: Float64Array, { own, shared }: LowRank): Float64Array {
  const size = own.length;
  const along = rowProducts(matrix, shared, size);
  const product = rowProducts(along, transposed(shared, size), shared.length / size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) {
      const index = i * size + j;
      product[index] = at(matrix, index) * at(own, j) - at(product, index);
    }
  }
  return product;
}

/** tr(PGP) of a symmetric G, without the products of whole matrices. */
export function squareTrace({ own, shared }: LowRank, symmetric: Float64Array): number {
  const size = own.length;
  const rank = shared.length / size;
  let trace = 0;
  for (let i = 0; i < size; i += 1) trace += at(own, i) ** 2 * at(symmetric, i * size + i);
  const moved = rowProducts(shared, symmetric, size);
  const products = symmetricRowProducts(shared, shared, { columns: size });
  const along = new Float64Array(size);
  for (let k = 0; k < rank; k += 1) {
    along.fill(0);
    for (let l = 0; l < rank; l += 1) {
      const half = at(products, k * rank + l) / 2;
      for (let i = 0; i < size; i += 1) along[i] = at(along, i) + half * at(shared, l * size + i);
    }
    for (let i = 0; i < size; i += 1)
      trace -= 2 * (at(shared, k * size + i) * at(own, i) - at(along, i)) * at(moved, k * size + i);
  }
  return trace;
}
