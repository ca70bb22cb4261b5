import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { piecesWords } from "@/features/calls/pieces-computed";
import type { LinkTarget } from "@/features/mail/schema";
import { storedPattern } from "@/features/patterns/data";
import { callDates, type CallDates } from "@/features/recruiting/listing/data";
import { listingSchema, testerDatesSchema, type TesterDates } from "@/features/recruiting/listing/schema";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { momentWords, untilWords, zoneWords } from "@/ui/moment-copy";

/** A tester as mail to them names them and their test. */
export interface MailedTester {
  readonly testerId: string;
  readonly callId: string;
  /** "" where they gave none, or it was deleted. */
  readonly name: string;
  readonly title: string;
  /** They applied; else they were invited by hand. */
  readonly hasApplied: boolean;
  readonly pattern: string;
  readonly sizeId: string;
  /** The size's label. */
  readonly size: string;
  /** The pieces that they make, where it is not the whole garment. */
  readonly pieces: string | null;
  /** Null where nothing has set any. */
  readonly dates: CallDates<TesterDates> | null;
  readonly timeZone: string;
  /** Until when an offered place can be answered. */
  readonly expiresAt: Date | null;
  /** Their personal link: it opens the offer, and then their test. */
  readonly ownLink: LinkTarget;
}

/** Testers who have an address, in the order of their call, each with what mail to them says of them. */
export async function mailedTesters(
  connection: Connection,
  testers: Prisma.TesterWhereInput,
): Promise<readonly AddressedTester[]> {
  const where = { AND: [testers, { contact: { email: { not: null } } }] };
  const rows = await connection.tester.findMany({ where, orderBy: { position: "asc" }, select: mailedTesterSelect });
  const ids = new Set(rows.flatMap(({ revisionId }) => revisionId ?? []));
  const revisions = await connection.revision.findMany({
    where: { id: { in: [...ids] } },
    select: { id: true, document: true },
  });
  const patterns = new Map(revisions.map((revision) => [revision.id, storedPattern(revision)]));
  return rows.map((row) => ({ row, tester: mailedTester(row, patterns.get(row.revisionId ?? "")) }));
}

/** @param pattern the revision that they work from. */
function mailedTester(row: Row, pattern: PatternDocument | undefined): MailedTester {
  const { id, callId, call, size, linkVersion, invitationExpiresAt: expiresAt } = row;
  const listing = call.listing?.publishedAt == null ? null : listingSchema.parse(call.listing.document);
  const zone = listing?.timeZone ?? "UTC";
  const days = row.dates === null ? (listing?.dates ?? null) : testerDatesSchema.parse(row.dates);
  return {
    ...{
      testerId: id,
      callId,
      name: row.contact?.name ?? "",
      title: call.title,
      hasApplied: row.applicationId !== null,
      pattern: pattern?.name ?? call.title,
      expiresAt,
    },
    sizeId: size,
    size: pattern?.sizes.find((each) => each.id === size)?.label ?? size,
    pieces: pattern === undefined ? null : piecesWords(pattern, call.pieces),
    dates: days === null ? null : callDates(days, zone),
    timeZone: row.timeZone ?? zone,
    ownLink: { before: "/invited/", key: "invitation", id, version: linkVersion },
  };
}

/** The pattern's owner, who signs and gets the replies. */
export const signingDesigner = {
  where: { role: "owner" },
  take: 1,
  select: { account: { select: { name: true, email: true } } },
} as const;

const mailedTesterSelect = {
  ...{ id: true, callId: true, applicationId: true, revisionId: true, size: true, linkVersion: true },
  ...{ acceptedAt: true, invitationExpiresAt: true, timeZone: true, dates: true },
  contact: { select: { name: true, email: true } },
  call: {
    select: {
      ...{ title: true, pieces: true },
      listing: { select: { document: true, publishedAt: true } },
      pattern: { select: { memberships: signingDesigner } },
    },
  },
} satisfies Prisma.TesterSelect;

export interface AddressedTester {
  readonly row: Row;
  readonly tester: MailedTester;
}

type Row = Prisma.TesterGetPayload<{ select: typeof mailedTesterSelect }>;

/** Labels with what they stand for, as a message lists them. */
export type Facts = [string, string][];

/** What of the garment is tested, where it is a part. */
export function pieceFact({ pieces }: Pick<MailedTester, "pieces">): Facts {
  return pieces === null ? [] : [["You make only", pieces]];
}

/** The days of a test for its tester. */
export function dateFacts(dates: MailedTester["dates"], timeZone: string): Facts {
  if (dates === null) return [];
  return [
    ["Start", momentWords(dates.startOn.at, { timeZone, edge: "start" })],
    ["Swatch due", untilWords(dates.swatchBy.at, timeZone)],
    ["Report due", untilWords(dates.reportBy.at, timeZone)],
  ];
}

export function zoneFact(timeZone: string): Facts {
  return [["Time zone", zoneWords(timeZone)]];
}
