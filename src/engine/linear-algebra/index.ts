export { at } from "./at";
export { indexAt } from "./index-at";
export type { Matrix } from "./matrix";
export { cholesky, factorise } from "./cholesky";
export { logDeterminant } from "./log-determinant";
export { solveLower } from "./solve-lower";
export { squareProduct } from "./square-product";
export { solveUpper } from "./solve-upper";
export { leastSquares } from "./least-squares";
