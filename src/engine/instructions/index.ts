export { readInstructions, type BlockKind, type InstructionBlock } from "./read-instructions";
export type { Place } from "./place";
export { findPlace } from "./find-place";
export { markSizeNumbers, type ListPart, type Segment } from "./mark-size-numbers";
