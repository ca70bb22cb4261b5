import type { Places } from "../../src/engine/pattern";
import { NOTICE_FIELDS } from "../../src/features/recruiting/listing/field-names";
import { initialListing } from "../../src/features/recruiting/listing/initial-listing";
import type { TypedListing } from "../../src/features/recruiting/listing/schema";
import { dayAt, daysAfter } from "../../src/server/time-zone";
import { saltmarshPattern } from "./saltmarsh-pattern";

const TIME_ZONE = "Europe/Lisbon";

/** What the demonstration's call tells, with days that lie ahead of the day on which it is laid. Invented throughout. */
export function saltmarshListing({ title, places, now }: { title: string; places: Places; now: Date }): TypedListing {
  const today = dayAt(now, TIME_ZONE);
  return {
    ...initialListing(saltmarshPattern, { title, places, timeZone: TIME_ZONE }),
    introduction:
      "A plain tee for windy evenings, worked in the round up to the underarms, then back and front apart, with sleeves picked up at the armholes. Everything about it is invented, and so am I: apply, and see how a test goes.",
    applyUntil: daysAfter(today, 21),
    startOn: daysAfter(today, 28),
    swatchBy: daysAfter(today, 42),
    reportBy: daysAfter(today, 98),
    gives: "The finished pattern, your name in it if you like, and one more pattern of your choice.",
    mostApplications: "60",
    [NOTICE_FIELDS.responsible]: "Ines Marsh, a designer who is made up",
    [NOTICE_FIELDS.contact]: "ines@example.org",
  };
}
