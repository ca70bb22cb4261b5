export { applyEdits, type AppliedEdits, type EditRemark } from "./apply-edits";
export { editFields, type EditField, type EditKind } from "./edit-fields";
export type { ChangeUnit, PatternChange } from "./pattern-change";
export { patternChanges } from "./pattern-changes";
export { answerMeant, inUnitOf, isBesideTexts, isMeant, unitOfEdits, withText, type TypedEdits } from "./typed-edits";
