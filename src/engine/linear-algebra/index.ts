export { at, type Matrix, indexAt } from "./matrix";
export { cholesky, factorise, logDeterminant } from "./cholesky";
export { solveLower, solveUpper } from "./solve-triangular";
export { squareProduct } from "./square-product";
export { leastSquares } from "./least-squares";
