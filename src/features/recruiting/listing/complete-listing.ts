import type { PatternDocument } from "@/engine/pattern";
import { endOfDay } from "@/server/time-zone";
import { readTyped, type FieldFault, type ReadListing } from "./read-typed";
import { datesSchema, type ListingDocument, type TypedListing } from "./schema";

/** A listing that can be published. */
export interface CompleteListing extends Pick<ReadListing, "title" | "places" | "agreement" | "sharing"> {
  readonly document: ListingDocument;
  /** The moment after which nobody can apply. */
  readonly applyUntil: Date;
}

export type Whole =
  | { readonly ok: true; readonly listing: CompleteListing }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/**
 * Reads a form's fields as a listing that can be published.
 *
 * @param published the published listing, if any: its last day to apply may have passed, if it is unchanged.
 */
export function completeListing(
  typed: TypedListing,
  { pattern, now, published }: { pattern: PatternDocument; now: Date; published: ListingDocument | null },
): Whole {
  const { listing, faults } = readTyped(typed, pattern);
  const dates = datesSchema.safeParse(listing.dates);
  if (faults.length > 0 || !dates.success) return { ok: false, faults };
  const document = { ...listing.document, dates: dates.data };
  const applyUntil = endOfDay(document.dates.applyUntil, document.timeZone);
  const isNew = published?.dates.applyUntil !== document.dates.applyUntil || published.timeZone !== document.timeZone;
  if (isNew && applyUntil <= now)
    return {
      ok: false,
      faults: [{ field: "applyUntil", message: "This day has passed. Choose today or later.", isMissing: false }],
    };
  const { title, places, agreement, sharing } = listing;
  return { ok: true, listing: { title, places, agreement, sharing, document, applyUntil } };
}
