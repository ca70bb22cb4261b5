import type { PatternDocument } from "../pattern";
import type { DraftPattern, PatternDraft } from "./draft-pattern";
import { patternChanges } from "./pattern-changes";
import { applyChange } from "./apply-change";

/**
 * Moves a draft to another revision.
 *
 * @param from the revision that it was started on.
 * @param onto the revision that it is moved to.
 * @returns `onto` with all changes that the draft makes to `from`.
 */
export function rebaseDraft(draft: PatternDraft, from: PatternDocument, onto: PatternDocument): PatternDraft {
  const changes = patternChanges(from, draft.pattern);
  return {
    ...draft,
    pattern: changes.reduce<DraftPattern>((into, { path }) => applyChange(into, draft.pattern, path), onto),
  };
}
