import { ownValue, type PatternDocument } from "../pattern";
import type { PatternDraft } from "./draft-pattern";
import { editFields } from "./edit-fields";
import { plausibilityQuestion } from "./plausibility-question";

/** A question about an implausible number. */
export interface DraftQuestion {
  /** As in `editFields`. */
  readonly path: string;
  readonly value: number;
  readonly message: string;
  /** The designer has confirmed this number. */
  readonly meant: boolean;
}

/**
 * Questions about numbers of a draft that are implausible, or far from their previous value.
 *
 * @param base the revision that is being edited.
 * @param document the readable part of the draft.
 */
export function draftQuestions(
  base: PatternDocument,
  document: PatternDocument,
  meant: PatternDraft["meant"],
): DraftQuestion[] {
  const before = valuesByPath(base);
  return editFields(document).flatMap((field) => {
    const { path, value } = field;
    if (value === undefined) return [];
    const message = plausibilityQuestion({ ...field, value: before.get(path) }, value);
    return message === undefined ? [] : [{ path, value, message, meant: ownValue(meant, path) === value }];
  });
}

const known = new WeakMap<PatternDocument, ReadonlyMap<string, number | undefined>>();

function valuesByPath(pattern: PatternDocument): ReadonlyMap<string, number | undefined> {
  const values = known.get(pattern) ?? new Map(editFields(pattern).map(({ path, value }) => [path, value]));
  known.set(pattern, values);
  return values;
}
