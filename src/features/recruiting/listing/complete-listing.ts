import type { PatternDocument } from "@/engine/pattern";
import { endOfDay } from "@/server/time-zone";
import { readTyped, type FieldFault, type ReadOpening } from "./read-typed";
import { datesSchema, type OpeningDocument, type TypedOpening } from "./schema";

/** A listing that can be published. */
export interface WholeOpening extends Pick<ReadOpening, "title" | "places" | "agreement"> {
  readonly document: OpeningDocument;
  /** The moment after which nobody can apply. */
  readonly applyUntil: Date;
}

export type Whole =
  | { readonly ok: true; readonly opening: WholeOpening }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/**
 * Reads a form's fields as a listing that can be published.
 *
 * @param published the published listing, if any: its last day to apply may have passed, if it is unchanged.
 */
export function wholeOpening(
  typed: TypedOpening,
  { pattern, now, published }: { pattern: PatternDocument; now: Date; published: OpeningDocument | null },
): Whole {
  const { opening, faults } = readTyped(typed, pattern);
  const dates = datesSchema.safeParse(opening.dates);
  if (faults.length > 0 || !dates.success) return { ok: false, faults };
  const document = { ...opening.document, dates: dates.data };
  const applyUntil = endOfDay(document.dates.applyUntil, document.timeZone);
  const isNew = published?.dates.applyUntil !== document.dates.applyUntil || published.timeZone !== document.timeZone;
  if (isNew && applyUntil <= now)
    return {
      ok: false,
      faults: [{ field: "applyUntil", message: "This day has passed. Choose today or later.", isMissing: false }],
    };
  const { title, places, agreement } = opening;
  return { ok: true, opening: { title, places, agreement, document, applyUntil } };
}
