import { ownValue, type PatternDocument } from "../pattern";
import type { PatternDraft } from "./draft-pattern";
import { editFields } from "./edit-fields";
import { plausibilityQuestion } from "./plausibility-question";

/** An odd number that is asked back. */
export interface DraftQuestion {
  /** As in `editFields`. */
  readonly path: string;
  readonly value: number;
  readonly message: string;
  /** She has said so of this very number. */
  readonly meant: boolean;
}

/**
 * Numbers of a draft so far from what people make, or from what they were, that they are asked back.
 *
 * @param base the revision that is being edited.
 * @param document what can be read of the draft.
 */
export function draftQuestions(
  base: PatternDocument,
  document: PatternDocument,
  meant: PatternDraft["meant"],
): DraftQuestion[] {
  const before = new Map(editFields(base).map((field) => [field.path, field.value]));
  return editFields(document).flatMap((field) => {
    const { path, value } = field;
    if (value === undefined) return [];
    const message = plausibilityQuestion({ ...field, value: before.get(path) }, value);
    return message === undefined ? [] : [{ path, value, message, meant: ownValue(meant, path) === value }];
  });
}
