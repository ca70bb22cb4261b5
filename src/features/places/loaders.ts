import "server-only";
import type { ApplicantsDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import type { TesterDates } from "@/features/openings/schema";
import { dayAt, daysAfter } from "@/server/time-zone";
import { placingQuestion, type Considering } from "./applicants-document";
import { invitationRecord, NO_ZONE, placingRows, type PlacingRows } from "./data";
import { freePlaces, laterDates, type FreePlaces } from "./free-places";
import { lossOf, type Loss } from "./places-loss";
import { placesBoard, type PlacesBoard } from "./placing-board";
import type { PlacesQuery } from "./schema";

/** How long an invitation is good for unless she says otherwise. */
const DAYS_TO_ANSWER = 7;

export interface LoadedPlaces {
  readonly rows: PlacingRows;
  readonly considering: Considering;
  readonly board: PlacesBoard;
  readonly free: readonly FreePlaces[];
  readonly loss: Loss;
  readonly now: Date;
  /** The call's. */
  readonly timeZone: string;
  /** The day that an invitation ends on unless she says otherwise. */
  readonly endsOn: string;
  /** Days for who begins later than the others; null where the call has told none. */
  readonly laterDates: TesterDates | null;
}

/** All that the page of places shows. */
export async function loadPlaces(access: CallAccess, query: PlacesQuery): Promise<LoadedPlaces> {
  const now = new Date();
  const [rows, record] = await Promise.all([placingRows(access), invitationRecord(access)]);
  const considering = query.with ?? usualConsidering(rows);
  const board = placesBoard(rows, { considering, now });
  const timeZone = rows.opening?.timeZone ?? NO_ZONE;
  const today = dayAt(now, timeZone);
  return {
    ...{ rows, considering, board, now, timeZone },
    free: freePlaces(rows, board, now),
    loss: lossOf(record),
    endsOn: daysAfter(today, DAYS_TO_ANSWER),
    laterDates: rows.opening === null ? null : laterDates(rows.opening.dates, { today, daysLater: daysAfter }),
  };
}

/** The question that the page puts to the engine, as a document. */
export async function loadApplicantsDocument(access: CallAccess, query: PlacesQuery): Promise<ApplicantsDocument> {
  const rows = await placingRows(access);
  const considering = query.with ?? usualConsidering(rows);
  return placingQuestion(rows, { considering, now: new Date() }).document;
}

/** Where somebody with a maybe has been given a place, they are considered until the designer says otherwise. */
function usualConsidering({ applicants }: PlacingRows): Considering {
  const isMaybePlaced = applicants.some(({ word, size, hold }) => word === "maybe" && size !== null && hold === null);
  return isMaybePlaced ? "maybe" : "yes";
}
