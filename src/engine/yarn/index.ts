export { publishedMetres, yarnNeeds, type SizeNeed, type YarnNeed } from "./yarn-needs";
export { fitYarnRatios, type YarnRatios } from "./fit-yarn-ratios";
export { yarnEntryErrors, type YarnEntryError } from "./yarn-entry-errors";
export { totalSizeM, yarnUses, type FabricUse, type YarnUse } from "./yarn-use";
