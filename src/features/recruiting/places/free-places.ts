import { findReplacements } from "@/engine/places";
import { ownValue, type ApplicantsDocument } from "@/engine/pattern";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { placesLeft } from "./placing-question";
import type { Applicant, PlacingRows } from "./data";
import type { Placed } from "./placing";
import type { StoredSide } from "./stored-board";
import { takesPlaceNow } from "./tester-state";

/** A designer cannot compare more than this. */
const MOST_CHOICES = 5;

/** Of further people who left a size only the number is shown. */
const MOST_LEFT = 10;

interface Standing {
  readonly document: ApplicantsDocument;
  readonly placed: readonly Placed[];
  readonly waiting: readonly Applicant[];
  readonly now: Date;
}

/** Sizes with a spot that opened up, each with the waiting applicants who may take it, best first. */
export function freePlaces(rows: PlacingRows, { document, placed, waiting, now }: Standing): StoredSide["free"] {
  const left = placesLeft(rows, now);
  const ids = new Map(waiting.flatMap(({ code, pin, applicationId }) => (pin === null ? [[code, applicationId]] : [])));
  return rows.pattern.sizes.flatMap(({ id: size }) => {
    const gone = rows.testers.filter((tester) => tester.size === size && !takesPlaceNow(tester, now));
    const standing = placed.filter((each) => each.size === size).length;
    const free = Math.min(gone.length, (ownValue(left, size)?.wanted ?? 0) - standing);
    if (free <= 0) return [];
    const { successors } = findReplacements({ document, size, waiting: [...ids.keys()] });
    return [
      {
        ...{ size, free },
        left: { many: gone.length, first: gone.slice(0, MOST_LEFT).map(({ testerId }) => testerId) },
        successors: successors.slice(0, MOST_CHOICES).flatMap(({ applicant, reason: { isFirstChoice } }) => {
          const application = ids.get(applicant);
          return application === undefined ? [] : [{ application, isFirstChoice }];
        }),
      },
    ];
  });
}

/**
 * Dates for someone who starts later than the others: each date of the call moved by the time since its start.
 *
 * @param today in the call's time zone.
 * @param daysLater so many days after a day.
 */
export function laterDates(
  { startOn, swatchBy, reportBy }: TesterDates,
  { today, daysLater }: { readonly today: string; readonly daysLater: (day: string, days: number) => string },
): TesterDates {
  const passed = Math.max(0, daysBetween(startOn, today));
  return {
    startOn: daysLater(startOn, passed),
    swatchBy: daysLater(swatchBy, passed),
    reportBy: daysLater(reportBy, passed),
  };
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
}

const DAY_MS = 24 * 60 * 60 * 1000;
