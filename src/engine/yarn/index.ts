export { publishedMetres, yarnNeeds, type SizeNeed, type YarnNeed } from "./yarn-needs";
export { fitYarnRatios, type YarnRatios } from "./fit-yarn-ratios";
export { yarnSlips, type YarnSlip } from "./yarn-slips";
export { totalSizeM, yarnUses, type FabricUse, type YarnUse } from "./yarn-use";
