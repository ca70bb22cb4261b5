export { applyEdits, type AppliedEdits, type EditRemark } from "./apply-edits";
export { editFields, type EditField, type EditKind } from "./edit-fields";
export { patternChanges, type ChangeUnit, type PatternChange } from "./pattern-changes";
export { answerMeant, inUnitOf, isBesideTexts, isMeant, unitOfEdits, withText, type TypedEdits } from "./typed-edits";
