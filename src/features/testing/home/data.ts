import "server-only";
import type { CallDates } from "@/features/recruiting/listing/data";
import { listingSchema, type NoticeFacts, type TesterDates } from "@/features/recruiting/listing/schema";
import { designerOfPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { testerScope, type TesterAccess } from "./access";
import { callTime, listingDays, testerTime, type ListingRow } from "./call-time";

export type ProgressStatus = "track" | "behind" | "stuck" | "stop";

export interface Milestone {
  readonly status: ProgressStatus;
  readonly note: string;
  readonly at: Date;
}

export interface TesterRead {
  readonly testerId: string;
  readonly code: string;
  /** Null once deleted. */
  readonly name: string | null;
  readonly email: string | null;
  /** Id of the size that the tester makes. */
  readonly size: string;
  readonly unit: "cm" | "in";
  readonly terms: "us" | "uk";
  /** The sizes whose numbers their text shows. */
  readonly sizesShown: "all" | "own";
  /** The tester's own, or the call's if they chose none. */
  readonly timeZone: string;
  /** Null if neither the call nor the tester has dates. */
  readonly dates: CallDates<TesterDates> | null;
  readonly stoppedAt: Date | null;
  /** It was the designer who ended it. */
  readonly stoppedByDesigner: boolean;
  /** The designer opened their spot for somebody else. */
  readonly freedAt: Date | null;
  readonly hasAccount: boolean;
  /** How they would like to be named among the testers: "" for not at all, null until they have said. */
  readonly creditName: string | null;
  /** The newest progress update. */
  readonly milestone: Milestone | null;
  readonly revisionNumber: number;
  /** What the listing promises testers; empty if nothing was written. */
  readonly promised: string;
  /** What the listing says about the yarn; empty if nothing was written. */
  readonly yarnAsked: string;
  /** What the designer says in the privacy notice; undefined while it is not complete. */
  readonly notice: NoticeFacts | undefined;
  readonly call: {
    readonly callId: string;
    readonly title: string;
    readonly status: "open" | "closed";
    readonly designerName: string;
    readonly isDemo: boolean;
    /** The ids of those that they make; none stands for the whole garment. */
    readonly pieces: readonly string[];
  };
}

/** Everything that a tester's pages show about the tester and the test, except the report. */
export async function readTester(access: TesterAccess): Promise<TesterRead> {
  return toTesterRead(await database().tester.findUnique({ where: testerScope(access), select: TESTER_READ }));
}

/** @throws {AppError} "not-found" if the row is gone, or the tester has no revision. */
export function toTesterRead(row: Prisma.TesterGetPayload<{ select: typeof TESTER_READ }> | null): TesterRead {
  if (row?.revision == null) throw new AppError("not-found");
  const { contact, call, accountId, milestones, unit, terms, sizesShown } = row;
  const [milestone] = milestones;
  return {
    testerId: row.id,
    code: row.code,
    name: contact?.name ?? null,
    email: contact?.email ?? null,
    size: row.size,
    ...{ unit, terms, sizesShown },
    ...testerTime(row, callTime(call.listing)),
    stoppedAt: row.stoppedAt,
    stoppedByDesigner: row.stoppedByDesigner,
    freedAt: row.freedAt,
    hasAccount: accountId !== null,
    creditName: contact?.creditName ?? null,
    milestone: milestone ? { status: milestone.status, note: milestone.note, at: milestone.createdAt } : null,
    revisionNumber: row.revision.number,
    ...writtenIn(call.listing),
    call: {
      callId: call.id,
      title: call.title,
      status: call.status,
      designerName: call.pattern.memberships[0]?.account.name ?? "",
      isDemo: call.pattern.isDemo,
      pieces: call.pieces,
    },
  };
}

/** What a published listing says to testers; "" for what nobody wrote. */
export function writtenIn(listing: ListingRow | null): Pick<TesterRead, "promised" | "yarnAsked" | "notice"> {
  if (listing?.publishedAt == null) return { promised: "", yarnAsked: "", notice: undefined };
  const { gives, yarn, notice } = listingSchema.parse(listing.document);
  return { promised: gives, yarnAsked: yarn, notice };
}

/** What `toTesterRead` reads of a tester's row. */
export const TESTER_READ = {
  id: true,
  code: true,
  size: true,
  unit: true,
  terms: true,
  sizesShown: true,
  timeZone: true,
  dates: true,
  stoppedAt: true,
  stoppedByDesigner: true,
  freedAt: true,
  accountId: true,
  contact: true,
  revision: { select: { number: true } },
  milestones: { orderBy: { createdAt: "desc" }, take: 1 },
  call: {
    select: {
      id: true,
      title: true,
      status: true,
      pieces: true,
      listing: listingDays,
      pattern: { select: { isDemo: true, memberships: designerOfPattern } },
    },
  },
} satisfies Prisma.TesterSelect;
