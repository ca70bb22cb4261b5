import { callDates, NO_ZONE, type CallDates } from "@/features/recruiting/listing/data";
import { listingSchema, testerDatesSchema, type TesterDates } from "@/features/recruiting/listing/schema";

/** A call's dates as moments, null if it has none, and their time zone. */
export interface CallTime {
  readonly timeZone: string;
  readonly dates: CallDates<TesterDates> | null;
}

export interface ListingRow {
  readonly document: unknown;
  readonly publishedAt: Date | null;
}

/** @param listing the call's, as `listingDays` reads it. */
export function callTime(listing: ListingRow | null | undefined): CallTime {
  if (listing?.publishedAt == null) return { timeZone: NO_ZONE, dates: null };
  const { timeZone, dates } = listingSchema.parse(listing.document);
  return { timeZone, dates: callDates(dates, timeZone) };
}

/** The zone that a tester's dates are shown in, and the dates: their own if they have some, else the call's. */
export function testerTime(
  { dates, timeZone }: { readonly dates: unknown; readonly timeZone: string | null },
  call: CallTime,
): CallTime {
  const own = dates === null ? call.dates : callDates(testerDatesSchema.parse(dates), call.timeZone);
  return { timeZone: timeZone ?? call.timeZone, dates: own };
}

/** The columns of a call that its testers' dates need. */
export const listingDays = { select: { document: true, publishedAt: true } } as const;
