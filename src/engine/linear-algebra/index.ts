export { at, type Matrix, indexAt } from "./matrix";
export { cholesky, factorise, logDeterminant } from "./cholesky";
export { inverseFromFactor } from "./inverse-from-factor";
export { mirrorLower } from "./mirror-lower";
export { rowProducts, symmetricRowProducts } from "./row-products";
export { solveLower, solveUpper } from "./solve-triangular";
export { squareProduct } from "./square-product";
export { transposed } from "./transposed";
export { leastSquares } from "./least-squares";
