import "server-only";
import { patternOfPieces, type PatternDocument, type Places } from "@/engine/pattern";
import { callScope, type CallAccess } from "@/features/calls/access";
import { piecesWords } from "@/features/calls/pieces-computed";
import { placesBySize } from "@/features/calls/places-computed";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { designerOfPattern, newestDocument, storedPattern } from "@/features/patterns/data";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { endOfDay, startOfDay } from "@/server/time-zone";
import { publishedScope, type PublishedCall } from "./access";
import type { PhotoSharing } from "./photo-sharing-schema";
import { listingSchema, type Dates, type ListingDocument, type NoticeFacts } from "./schema";

/** A date of a call, as a day and as a moment. */
export interface CallDay {
  readonly day: string;
  /** The first moment of a start day; the first moment after a deadline. */
  readonly at: Date;
}

export type CallDates<Days extends Partial<Dates> = Dates> = { readonly [Key in keyof Days]: CallDay };

/** The time zone of a call that has set none. */
export const NO_ZONE = "UTC";

/** The dates of a call, or a tester's own (`TesterDates`), as moments. */
export function callDates<Days extends Partial<Dates>>(days: Days, timeZone: string): CallDates<Days>;
export function callDates(days: Partial<Dates>, timeZone: string): Readonly<Record<string, CallDay>> {
  return Object.fromEntries(
    Object.entries(days).map(([key, day]) => [
      key,
      { day, at: key === "startOn" ? startOfDay(day, timeZone) : endOfDay(day, timeZone) },
    ]),
  );
}

export interface Agreement {
  readonly version: number;
  readonly text: string;
}

/** The published listing of a call. */
export interface Listing {
  readonly version: number;
  readonly publishedAt: Date;
  readonly document: ListingDocument;
  readonly dates: CallDates;
  /** The newest; earlier ones still bind those who agreed to them. */
  readonly agreement: Agreement;
  /** What that says about photos. */
  readonly sharing: PhotoSharing;
}

/** The published listing of a call of the viewer's. @returns null if it is not published or the call has none. */
export async function readListing(access: CallAccess): Promise<Listing | null> {
  const row = await database().listing.findFirst({
    where: { publishedAt: { not: null }, call: callScope(access) },
    select: listingSelect,
  });
  return row === null ? null : toListing(row);
}

/** What the owner of a pattern said in the privacy notice that they published last. @returns null if there is none. */
export async function lastNotice(access: PatternAccess): Promise<NoticeFacts | null> {
  const owner = await database().membership.findFirst({
    where: { role: "owner", pattern: patternScope(access) },
    select: { accountId: true },
  });
  if (owner === null) return null;
  const last = await database().listing.findFirst({
    where: {
      ...{ publishedAt: { not: null }, document: { path: ["notice"], not: Prisma.AnyNull } },
      call: { pattern: { memberships: { some: { role: "owner", accountId: owner.accountId } } } },
    },
    orderBy: { publishedAt: "desc" },
    select: { document: true },
  });
  return last === null ? null : (listingSchema.parse(last.document).notice ?? null);
}

/** Whether people can apply now, and if not why: the last day has passed, the call is closed, or it has enough applications. */
export type Taking = "open" | "over" | "closed" | "full";

/** Everything that the public page of a call shows. */
export interface PublishedListing extends Listing {
  readonly callId: string;
  readonly title: string;
  /** The designer's name. */
  readonly designer: string;
  /** Made up for the demo. */
  readonly isDemo: boolean;
  /** Its newest revision. */
  readonly pattern: PatternDocument;
  /** The pieces that testers make, where it is not the whole garment. */
  readonly pieces: string | null;
  /** What of the pattern they make and measure: all of it, or those pieces. */
  readonly tested: PatternDocument;
  readonly places: Places;
  readonly taking: Taking;
}

/** Reads what a published call shows everybody. @throws {AppError} "not-found" if it was unpublished in the meantime. */
export async function readPublished(published: PublishedCall): Promise<PublishedListing> {
  const row = await database().call.findUnique({ where: publishedScope(published), select: publishedSelect });
  const [revision] = row?.pattern.revisions ?? [];
  if (row?.listing == null || revision === undefined) throw new AppError("not-found");
  const listing = toListing(row.listing);
  const pattern = storedPattern(revision);
  return {
    ...listing,
    callId: row.id,
    title: row.title,
    ...ownerOf(row.pattern),
    ...{ pattern, pieces: piecesWords(pattern, row.pieces), tested: patternOfPieces(pattern, row.pieces) },
    places: placesBySize(row.places),
    taking: takingNow(listing, { isClosed: row.status === "closed", applications: row._count.applications }),
  };
}

export const listingSelect = {
  version: true,
  publishedAt: true,
  document: true,
  call: {
    select: {
      agreements: {
        orderBy: { version: "desc" },
        take: 1,
        select: { version: true, text: true, progressPhotos: true, finishedPhotos: true },
      },
    },
  },
} as const;

export const patternOwnerSelect = {
  isDemo: true,
  memberships: designerOfPattern,
} as const;

interface OwnedPattern {
  readonly isDemo: boolean;
  readonly memberships: readonly { readonly account: { readonly name: string } }[];
}

/** The owner of a pattern. */
export function ownerOf({ isDemo, memberships }: OwnedPattern): { designer: string; isDemo: boolean } {
  return { designer: memberships[0]?.account.name ?? "", isDemo };
}

const publishedSelect = {
  id: true,
  title: true,
  status: true,
  pieces: true,
  listing: { select: listingSelect },
  places: true,
  pattern: {
    select: {
      ...patternOwnerSelect,
      revisions: newestDocument,
    },
  },
  _count: { select: { applications: { where: { withdrawnAt: null } } } },
} as const;

interface ListingRow {
  readonly version: number;
  readonly publishedAt: Date | null;
  readonly document: unknown;
  readonly call: { readonly agreements: readonly (Agreement & PhotoSharing)[] };
}

export function toListing({ version, publishedAt, document, call }: ListingRow): Listing {
  const [newest] = call.agreements;
  if (publishedAt === null || newest === undefined) throw new Error("a published listing has no agreement");
  const parsed = listingSchema.parse(document);
  const { progressPhotos, finishedPhotos, ...agreement } = newest;
  return {
    ...{ version, publishedAt, document: parsed, dates: callDates(parsed.dates, parsed.timeZone), agreement },
    sharing: { progressPhotos, finishedPhotos },
  };
}

function takingNow(
  { document, dates }: Listing,
  { isClosed, applications }: { readonly isClosed: boolean; readonly applications: number },
): Taking {
  if (isClosed) return "closed";
  if (dates.applyUntil.at.getTime() <= Date.now()) return "over";
  return document.mostApplications !== null && applications >= document.mostApplications ? "full" : "open";
}
