export { fitVarianceComponents, type VarianceFit } from "./fit-variance-components";
export { blockResidual } from "./add-block";
export { gatherInformation } from "./gather-information";
export type { GroupInformation, Information } from "./information";
export { solveSurface, type SolvedGroup, type SurfaceSolution } from "./solve-surface";
export { surfacePosterior, type GroupPosterior, type SurfacePosterior } from "./surface-posterior";
export type { Block, BlockEffect, CellRows, Group, Readings, SdPrior, SharedColumn, Surface } from "./variance-model";
export { addRow, cellRows, rowTimes, type CellRow } from "./cell-rows";
