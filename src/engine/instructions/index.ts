export { readInstructions, type BlockKind, type InstructionBlock } from "./read-instructions";
export type { Place } from "./place";
export { findBlock } from "./find-block";
export { correctNumbers, textWithChanges, type CorrectedSegment, type SizeChange } from "./correct-numbers";
export { markSizeNumbers } from "./mark-size-numbers";
export { givesNumber, passagesWith } from "./passages-with";
