import "server-only";
import { mostTesters } from "@/engine/places";
import { piecesWords } from "@/features/calls/pieces-computed";
import type { Agreement, CallDates } from "@/features/recruiting/listing/data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { designerOfPattern, storedPattern } from "@/features/patterns/data";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Connection } from "@/server/transaction";
import { invitedScope, type InvitedAccess } from "@/features/recruiting/invitations/access";
import { callTime, listingDays, testerTime } from "../home/call-time";

/** What an invitation's link leads to. */
export interface InvitedRead {
  readonly testerId: string;
  /** The tester's name; null once deleted. */
  readonly name: string | null;
  readonly accountId: string | null;
  readonly sizeLabel: string;
  readonly patternName: string;
  /** The pieces that they make, where it is not the whole garment. */
  readonly pieces: string | null;
  readonly craft: "crochet" | "knitting";
  readonly callId: string;
  readonly callTitle: string;
  readonly isClosed: boolean;
  readonly isPublished: boolean;
  readonly designerName: string;
  readonly isDemo: boolean;
  readonly expiresAt: Date;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  /** Others have accepted all spots in this size. */
  readonly isPlaceGone: boolean;
  readonly unit: "cm" | "in";
  readonly terms: "us" | "uk";
  /** The tester's own if they chose one, else the call's. */
  readonly timeZone: string;
  readonly hasOwnZone: boolean;
  readonly dates: CallDates<TesterDates> | null;
  /** What they have to agree to when they accept; null where they did so in their application, or the test has none. */
  readonly agreement: Agreement | null;
  /** Who wears the garment, as far as is known; null of those who applied, who have said so. */
  readonly wearer: "self" | "child" | null;
}

export async function readInvited(access: InvitedAccess): Promise<InvitedRead> {
  const row = await database().tester.findUnique({ where: invitedScope(access), select: INVITED });
  if (row?.revision == null || row.invitationExpiresAt === null) throw new AppError("not-found");
  const { call, contact, revision, unit, terms } = row;
  const pattern = storedPattern(revision);
  const { acceptedAt, declinedAt, withdrawnAt, accountId } = row;
  return {
    ...{ testerId: row.id, accountId, acceptedAt, declinedAt, withdrawnAt, expiresAt: row.invitationExpiresAt },
    name: contact?.name ?? null,
    sizeLabel: pattern.sizes.find(({ id }) => id === row.size)?.label ?? row.size,
    patternName: pattern.name,
    pieces: piecesWords(pattern, call.pieces),
    craft: pattern.craft,
    callId: call.id,
    callTitle: call.title,
    isClosed: call.status === "closed",
    isPublished: call.listing?.publishedAt != null,
    designerName: call.pattern.memberships[0]?.account.name ?? "",
    isDemo: call.pattern.isDemo,
    agreement: agreementAsked(row),
    wearer: row.applicationId !== null ? null : row.isWornByChild ? "child" : "self",
    isPlaceGone: acceptedAt === null && (await isPlaceGone(database(), access, row)),
    ...{ unit, terms },
    hasOwnZone: row.timeZone !== null,
    ...testerTime(row, callTime(call.listing)),
  };
}

interface AskedRow {
  readonly applicationId: string | null;
  readonly call: { readonly followsId: string | null; readonly agreements: readonly Agreement[] };
}

/** Of an earlier test nothing holds for this one: who is invited again, or by hand into such a test, agrees anew. */
export function agreementAsked({ applicationId, call }: AskedRow): Agreement | null {
  const [newest] = call.agreements;
  return applicationId === null && call.followsId !== null ? (newest ?? null) : null;
}

/** The columns of a call that `agreementAsked` reads. */
export const agreementColumns = {
  followsId: true,
  agreements: { orderBy: { version: "desc" }, take: 1, select: { version: true, text: true } },
} as const;

/**
 * Whether others have accepted all spots in a size that was offered to an applicant. A tester who was
 * invited directly takes none of the spots that were offered.
 *
 * @param connection a transaction in which the call's row is locked, if a write depends on the answer.
 */
export async function isPlaceGone(
  connection: Connection,
  access: InvitedAccess,
  { size, applicationId }: { readonly size: string; readonly applicationId: string | null },
): Promise<boolean> {
  if (applicationId === null) return false;
  const call = { id: access.callId, testers: { some: invitedScope(access) } };
  const place = await connection.place.findFirst({ where: { size, call } });
  const accepted = await connection.tester.count({
    where: {
      ...{ size, call, id: { not: access.testerId }, applicationId: { not: null } },
      ...{ acceptedAt: { not: null }, stoppedAt: null },
    },
  });
  return accepted >= mostTesters(place ?? undefined);
}

const INVITED = {
  ...{
    id: true,
    size: true,
    accountId: true,
    applicationId: true,
    isWornByChild: true,
    unit: true,
    terms: true,
    timeZone: true,
    dates: true,
  },
  ...{ invitationExpiresAt: true, acceptedAt: true, declinedAt: true, withdrawnAt: true },
  contact: { select: { name: true } },
  revision: { select: { id: true, document: true } },
  call: {
    select: {
      id: true,
      title: true,
      status: true,
      pieces: true,
      ...agreementColumns,
      listing: listingDays,
      pattern: { select: { isDemo: true, memberships: designerOfPattern } },
    },
  },
} as const;
