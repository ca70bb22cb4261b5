export { stitchFaults, type StitchFault } from "./stitch-faults";
export { publishedMetres, yarnNeeds } from "./yarn-needs";
export { yarnEntryErrors } from "./yarn-entry-errors";
export { totalSizeM, yarnUses } from "./yarn-use";
