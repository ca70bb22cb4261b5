import "server-only";
import type { ApplicantsDocument, PatternDocument } from "@/engine/pattern";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { readMessages } from "@/features/mail/data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { dayAt, daysAfter } from "@/server/time-zone";
import { countUntold } from "./no-spot-data";
import { placingQuestion } from "./placing-question";
import { BoardPeople } from "./board-people";
import { NO_ZONE } from "@/features/recruiting/listing/data";
import { invitationRecord, placingRows } from "./data";
import { laterDates } from "./free-places";
import { invitationViews, type InvitationPage } from "./invitation-views";
import { lossOf, type Loss } from "./places-loss";
import { usualConsidering } from "./placing";
import { invitedPage, placingPeople, storedPlacing, type PlacingStatus, type StoredPlacing } from "./placing-data";
import type { PlacesQuery } from "./schema";
import { shownPeople, shownPositions, listedPeople, type ShownPeople } from "./shown-people";
import { DAYS_TO_ANSWER } from "../listing/usual-days-computed";
import type { Considering, StoredBoard, StoredSide } from "./stored-board";

/** The last day of an invitation, unless the designer types another. */
export function usualEnd(now: Date, timeZone: string): string {
  return daysAfter(dayAt(now, timeZone), DAYS_TO_ANSWER);
}

/** The last calculated placing, and the people of it that the page shows. */
export interface LoadedBoard {
  readonly board: StoredBoard;
  readonly considering: Considering;
  /** The board's part for that. */
  readonly side: StoredSide;
  readonly shown: ShownPeople;
  readonly people: BoardPeople;
}

export interface LoadedPlaces {
  readonly status: PlacingStatus;
  readonly isPublished: boolean;
  /** Null until it has been calculated. */
  readonly loaded: LoadedBoard | null;
  readonly invitations: InvitationPage;
  readonly loss: Loss;
  /** The call's. */
  readonly timeZone: string;
  /** The default last day of an invitation. */
  readonly endsOn: string;
  /** Applicants who have no spot and can be told so by mail. */
  readonly untold: number;
  /** Dates for someone who starts later than the others; null where the call has no dates. */
  readonly laterDates: TesterDates | null;
}

/**
 * Everything the page shows. It calculates nothing: see `calculatePlacing`.
 *
 * @param from who signs the invitations.
 */
export async function loadPlaces(
  access: CallAccess,
  { query, pattern, from }: { readonly query: PlacesQuery; readonly pattern: PatternDocument; readonly from: string },
): Promise<LoadedPlaces> {
  const now = new Date();
  const [stored, record, [invited, offers], untold] = await Promise.all([
    storedPlacing(access, now),
    invitationRecord(access),
    invitedWithOffers(access, { page: query.invited ?? 1, now }),
    countUntold(access, now),
  ]);
  const { status, listing } = stored;
  const timeZone = listing?.timeZone ?? NO_ZONE;
  const today = dayAt(now, timeZone);
  return {
    ...{ status, timeZone, isPublished: listing !== null, loss: lossOf(record) },
    loaded: await loadBoard(access, { stored, query, now }),
    invitations: invitationViews(invited, { from, pattern, listing, timeZone, offers }),
    endsOn: usualEnd(now, timeZone),
    untold,
    laterDates: listing === null ? null : laterDates(listing.dates, { today, daysLater: daysAfter }),
  };
}

/** Who is invited, and what became of the offers that they were sent by mail; none of these for viewers who may not invite. */
async function invitedWithOffers(access: CallAccess, asked: Parameters<typeof invitedPage>[1]) {
  const invited = await invitedPage(access, asked);
  const testerId = { in: invited.invited.map((tester) => tester.testerId) };
  return [invited, await readMessages({ kind: "place-offered", testerId, call: callEditScope(access) })] as const;
}

interface Asked {
  readonly stored: StoredPlacing;
  readonly query: PlacesQuery;
  readonly now: Date;
}

async function loadBoard(access: CallAccess, { stored, query, now }: Asked): Promise<LoadedBoard | null> {
  const { board } = stored;
  if (board === null) return null;
  const considering = query.with ?? board.usual;
  const side = board[considering];
  const shown = shownPeople(board, side, query);
  const positions = shownPositions(board, side, shown);
  const rows = await placingPeople(access, { positions, ...listedPeople(side, query) });
  return { board, considering, side, shown, people: new BoardPeople(board, rows, { considering, now }) };
}

/** The engine's input for assigning sizes, as a document. */
export async function loadApplicantsDocument(access: CallAccess, query: PlacesQuery): Promise<ApplicantsDocument> {
  const rows = await placingRows(access);
  const considering = query.with ?? usualConsidering(rows);
  return placingQuestion(rows, { considering, now: new Date() }).document;
}
