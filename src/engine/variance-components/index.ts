export { fitVarianceComponents, type VarianceFit } from "./fit-variance-components";
export { blockResidual } from "./add-block";
export { gatherInformation } from "./gather-information";
export { solveSurface, type SurfaceSolution } from "./solve-surface";
export { surfacePosterior } from "./surface-posterior";
export type { Block, BlockEffect, Group, Readings, SdPrior, SharedColumn, Surface } from "./variance-model";
export { addRow, cellRows, rowTimes } from "./cell-rows";
