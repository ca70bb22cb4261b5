import type { MessageWords } from "@/features/mail/schema";
import { fieldFaults, fillFields, type FieldValues } from "./message-fields-computed";

/** What designers changed in a kind of mail. */
export interface MessageChange {
  readonly isOff: boolean;
  /** Added below the text; "" for nothing. */
  readonly note: string;
  /** Their own words, with fields in square brackets; null: Sizewright's. */
  readonly words: OwnWords | null;
}

export interface OwnWords {
  readonly subject: string;
  readonly text: string;
}

/** The words of a message that a designer may write themselves: its subject and its first text. */
export function changeableWords({ subject, parts }: MessageWords): OwnWords {
  const first = parts.find((part) => "text" in part);
  return { subject, text: first?.text ?? "" };
}

/**
 * A message to one tester as their designers changed it. Where a field is not known for them, Sizewright's words stay.
 *
 * @returns null where it is switched off.
 */
export function changedMessage(
  said: MessageWords,
  { change, values }: { readonly change: MessageChange | undefined; readonly values: FieldValues },
): MessageWords | null {
  if (change === undefined) return said;
  if (change.isOff) return null;
  const { subject, text } = filled(change.words, values) ?? changeableWords(said);
  const first = said.parts.findIndex((part) => "text" in part);
  const [note] = [change.note].flatMap((typed) => (typed === "" ? [] : fillable(typed, values)));
  return {
    subject,
    parts: said.parts.flatMap((part, index) =>
      index === first ? [{ text }, ...(note === undefined ? [] : [{ text: note }])] : [part],
    ),
  };
}

function filled(words: OwnWords | null, values: FieldValues): OwnWords | null {
  if (words === null) return null;
  const [subject] = fillable(words.subject, values);
  const [text] = fillable(words.text, values);
  return subject === undefined || text === undefined ? null : { subject, text };
}

function fillable(typed: string, values: FieldValues): string[] {
  return fieldFaults(typed, [{ name: "", values }]).length === 0 ? [fillFields(typed, values)] : [];
}
