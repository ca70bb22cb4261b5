import type { Places } from "../../src/engine/pattern";
import { NOTICE_FIELDS } from "../../src/features/recruiting/listing/field-names";
import { initialListing } from "../../src/features/recruiting/listing/initial-listing";
import type { Dates, TypedListing } from "../../src/features/recruiting/listing/schema";
import { dayAt, daysAfter } from "../../src/server/time-zone";
import { saltmarshPattern } from "./saltmarsh-pattern";

const TIME_ZONE = "Europe/Lisbon";

interface ListingGiven {
  readonly title: string;
  readonly places: Places;
  /** Days from today on; negative where they have passed. */
  readonly inDays: Readonly<Record<keyof Dates, number>>;
  readonly now: Date;
}

/** What a test of the demonstration tells. Invented throughout. */
export function saltmarshListing({ title, places, inDays, now }: ListingGiven): TypedListing {
  return {
    ...initialListing(saltmarshPattern, { title, places, timeZone: TIME_ZONE }),
    introduction:
      "A plain tee for windy evenings, worked in the round up to the underarms, then back and front apart, with sleeves picked up at the armholes. Everything about it is invented, and so am I: apply, and see how a test goes.",
    ...Object.fromEntries(Object.entries(inDays).map(([name, days]) => [name, saltmarshDay(now, days)])),
    gives: "The finished pattern, your name in it if you like, and one more pattern of your choice.",
    mostApplications: "60",
    [NOTICE_FIELDS.responsible]: "Ines Marsh, a designer who is made up",
    [NOTICE_FIELDS.contact]: "ines@example.org",
  };
}

/** The day that lies so many days from now, where the designer lives. */
export function saltmarshDay(now: Date, inDays: number): string {
  return daysAfter(dayAt(now, TIME_ZONE), inDays);
}
