export { fitVarianceComponents, type VarianceFit } from "./fit-variance-components";
export { blockResidual } from "./block-precision";
export { buffersFor } from "./block-precision";
export { blockInAll, withoutBlock, withoutReading, type BlockInAll, type CellsWithout } from "./leave-out";
export { gatherInformation } from "./gather-information";
export { solveSurface, type SurfaceSolution } from "./solve-surface";
export { surfacePosterior, type GroupPosterior } from "./surface-posterior";
export type { Block, BlockEffect, Group, Readings, SdPrior, SharedColumn, Surface } from "./variance-model";
export { addRow, cellRows, rowTimes } from "./cell-rows";
