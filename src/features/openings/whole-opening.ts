import type { PatternDocument } from "@/engine/pattern";
import { endOfDay } from "@/server/time-zone";
import { readTyped, type FieldFault, type ReadOpening } from "./read-typed";
import { datesSchema, type OpeningDocument, type TypedOpening } from "./schema";

/** An opening that can be published. */
export interface WholeOpening extends Pick<ReadOpening, "title" | "places" | "agreement"> {
  readonly document: OpeningDocument;
  /** The moment after which nobody can apply. */
  readonly applyUntil: Date;
}

export type Whole =
  | { readonly ok: true; readonly opening: WholeOpening }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/**
 * A form's fields as an opening that can be published.
 *
 * @param stands what is published already: its last day to apply may be over, for nobody can bring it back.
 */
export function wholeOpening(
  typed: TypedOpening,
  { pattern, now, stands }: { pattern: PatternDocument; now: Date; stands: OpeningDocument | null },
): Whole {
  const { opening, faults } = readTyped(typed, pattern);
  const dates = datesSchema.safeParse(opening.dates);
  if (faults.length > 0 || !dates.success) return { ok: false, faults };
  const document = { ...opening.document, dates: dates.data };
  const applyUntil = endOfDay(document.dates.applyUntil, document.timeZone);
  const isNew = stands?.dates.applyUntil !== document.dates.applyUntil || stands.timeZone !== document.timeZone;
  if (isNew && applyUntil <= now)
    return {
      ok: false,
      faults: [{ field: "applyUntil", says: "This day is over already. Choose today or later.", isMissing: false }],
    };
  const { title, places, agreement } = opening;
  return { ok: true, opening: { title, places, agreement, document, applyUntil } };
}
