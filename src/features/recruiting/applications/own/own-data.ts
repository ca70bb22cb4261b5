import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { callDates, type CallDates } from "../../listing/data";
import { listingSchema } from "../../listing/schema";
import { designerOfPattern, newestDocument, storedPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { invitationState, type InvitationState } from "@/features/calls/tester-status";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { applicationScope, type ApplicationAccess } from "../access";
import { applicationSchema, measurementsSchema, typedBodySchema, type ApplicationDocument } from "../schema";
import { TESTER_SELECTED } from "../tester-selected";

/** An application as its applicant reads it: everything that is stored. */
export interface OwnApplication {
  readonly applicationId: string;
  readonly callId: string;
  readonly callTitle: string;
  readonly designer: string;
  /** The newest revision, for the names of sizes and measurements. */
  readonly pattern: PatternDocument;
  readonly name: string;
  readonly email: string;
  readonly measurements: Readonly<Record<string, number>>;
  readonly typed: Readonly<Record<string, string>>;
  readonly document: ApplicationDocument;
  readonly agreement: { readonly version: number; readonly text: string };
  readonly agreedAt: Date;
  readonly createdAt: Date;
  readonly withdrawnAt: Date | null;
  /** The designer's. */
  readonly decision: "yes" | "maybe" | "no" | null;
  /** It was made while signed in. */
  readonly hasAccount: boolean;
  readonly tester: { readonly testerId: string; readonly size: string; readonly state: InvitationState } | null;
  /** The call's dates; null if it was unpublished in the meantime. */
  readonly listing: { readonly dates: CallDates; readonly timeZone: string } | null;
  readonly isClosed: boolean;
}

/** Reads everything that is stored about an application. @throws {AppError} "not-found" if it was deleted in the meantime. */
export async function readOwnApplication(access: ApplicationAccess): Promise<OwnApplication> {
  const row = await database().application.findUnique({ where: applicationScope(access), select: SELECTED });
  const [revision] = row?.call.pattern.revisions ?? [];
  if (row === null || revision === undefined) throw new AppError("not-found");
  const { id, call, contact, body, tester, accountId, document, ...columns } = row;
  return {
    ...columns,
    applicationId: id,
    callTitle: call.title,
    designer: call.pattern.memberships[0]?.account.name ?? "",
    pattern: storedPattern(revision),
    name: contact?.name ?? "",
    email: contact?.email ?? "",
    measurements: measurementsSchema.parse(body?.measurements ?? {}),
    typed: typedBodySchema.parse(body?.typed ?? {}),
    document: applicationSchema.parse(document),
    hasAccount: accountId !== null,
    tester:
      tester === null ? null : { testerId: tester.id, size: tester.size, state: invitationState(tester, new Date()) },
    listing: listingOf(call.listing),
    isClosed: call.status === "closed",
  };
}

const SELECTED = {
  ...{ id: true, callId: true, accountId: true, document: true, agreedAt: true, createdAt: true, withdrawnAt: true },
  decision: true,
  agreement: { select: { version: true, text: true } },
  contact: { select: { name: true, email: true } },
  body: { select: { measurements: true, typed: true } },
  tester: { select: TESTER_SELECTED },
  call: {
    select: {
      title: true,
      status: true,
      listing: { select: { publishedAt: true, document: true } },
      pattern: {
        select: {
          memberships: designerOfPattern,
          revisions: newestDocument,
        },
      },
    },
  },
} satisfies Prisma.ApplicationSelect;

type Row = Prisma.ApplicationGetPayload<{ select: typeof SELECTED }>;

function listingOf(listing: Row["call"]["listing"]): OwnApplication["listing"] {
  if (listing?.publishedAt == null) return null;
  const { dates, timeZone } = listingSchema.parse(listing.document);
  return { dates: callDates(dates, timeZone), timeZone };
}
