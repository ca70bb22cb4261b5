import { initialListing } from "@/features/recruiting/listing/initial-listing";
import type { TypedListing } from "@/features/recruiting/listing/schema";
import { completeListing, type CompleteListing } from "../../src/features/recruiting/listing/complete-listing";
import { dayAt, daysAfter } from "@/server/time-zone";
import { patternDocument } from "../factories/pattern";

export const today = dayAt(new Date(), "Europe/Lisbon");

/** A listing of the factory's pattern as a designer types it, complete. */
export function typed(change: TypedListing = {}): TypedListing {
  return {
    ...initialListing(patternDocument(), { title: "Vest test", places: null, timeZone: "Europe/Lisbon" }),
    ...{ "least.small": "1", "wanted.small": "2", "least.large": "0", "wanted.large": "3" },
    ...{ applyUntil: daysAfter(today, 7), startOn: daysAfter(today, 10) },
    ...{ swatchBy: daysAfter(today, 20), reportBy: daysAfter(today, 60) },
    ...{ gives: "The pattern.", agreement: "I will report.", progressPhotos: "", finishedPhotos: "" },
    ...{ noticeResponsible: "Invented Designs", noticeContact: "privacy@example.org" },
    ...change,
  };
}

/** The same, read. */
export function whole(change: TypedListing = {}): CompleteListing {
  const read = completeListing(typed(change), { pattern: patternDocument(), now: new Date(), published: null });
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join(" "));
  return read.listing;
}
