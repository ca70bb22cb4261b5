import { fillPlace, type NearestApplicant, type Successor } from "@/engine/places";
import { own } from "@/engine/pattern";
import type { TesterDates } from "@/features/openings/schema";
import { placesLeft } from "./applicants-document";
import type { PlacingRows } from "./data";
import type { PlacesBoard } from "./placing-board";
import { takesPlaceNow, testerState, type TesterState } from "./tester-state";

/** A size that testers have left, with places that nobody stands in. */
export interface FreePlaces {
  readonly size: string;
  readonly label: string;
  readonly free: number;
  readonly left: readonly { readonly name: string; readonly state: TesterState }[];
  readonly successors: readonly Successor[];
  readonly nearest: readonly NearestApplicant[];
}

/** Sizes where a place fell free, each with those of the waiting who may have it, the best first. */
export function freePlaces(rows: PlacingRows, board: PlacesBoard, now: Date): FreePlaces[] {
  const left = placesLeft(rows, now);
  const waiting = board.waiting.flatMap(({ applicant }) => (applicant?.hold === null ? [applicant.code] : []));
  return rows.pattern.sizes.flatMap(({ id: size, label }) => {
    const gone = rows.testers.filter((tester) => tester.size === size && !takesPlaceNow(tester, now));
    const standing = board.placed.filter((placed) => placed.size === size).length;
    const free = Math.min(gone.length, (own(left, size)?.wanted ?? 0) - standing);
    if (free <= 0) return [];
    const names = gone.map((tester) => ({ name: tester.name, state: testerState(tester, now) }));
    return [{ size, label, free, left: names, ...fillPlace({ document: board.question, size, waiting }) }];
  });
}

/**
 * Days for somebody who begins later than the others: as long after each day of the call as the call has run by now.
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
