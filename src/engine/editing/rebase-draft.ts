import type { PatternDocument } from "../pattern";
import type { DraftPattern, PatternDraft } from "./draft-pattern";
import { patternChanges } from "./pattern-changes";
import { applyChange } from "./apply-change";

/**
 * A draft as if it had been begun on another revision.
 *
 * @param from the revision that it was begun on.
 * @param onto the revision that it now stands on.
 * @returns `onto` with all that the draft changes in `from`.
 */
export function rebaseDraft(draft: PatternDraft, from: PatternDocument, onto: PatternDocument): PatternDraft {
  const changes = patternChanges(from, draft.pattern);
  return {
    ...draft,
    pattern: changes.reduce<DraftPattern>((into, { path }) => applyChange(into, draft.pattern, path), onto),
  };
}
