import "server-only";
import { openingSchema, testerDatesSchema } from "@/features/openings/schema";
import { revisionSelect, toRevision, type Revision } from "@/features/patterns/data";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { testerScope, type TesterAccess } from "./access";
import { testerMoments, type TesterMoments } from "./tester-moments";

/** Where days are meant that nobody has said a zone for. */
const NO_ZONE = "UTC";

export interface TesterRead {
  readonly testerId: string;
  readonly code: string;
  /** Null where it was deleted. */
  readonly name: string | null;
  readonly email: string | null;
  readonly size: { readonly id: string; readonly label: string };
  readonly unit: "cm" | "in";
  readonly terms: "us" | "uk";
  /** Hers, or the call's where she has said none. */
  readonly timeZone: string;
  /** Null where the call has told no dates and she has none of her own. */
  readonly dates: TesterMoments | null;
  readonly acceptedAt: Date;
  readonly stoppedAt: Date | null;
  readonly hasAccount: boolean;
  /** When her newest report came; null where she has sent none. */
  readonly reportedAt: Date | null;
  readonly call: {
    readonly callId: string;
    readonly title: string;
    readonly status: "open" | "closed";
    readonly designerName: string;
    readonly invented: boolean;
  };
  /** What she works from. */
  readonly revision: Revision;
}

/** All that a tester's own pages tell of her and her test. */
export async function readTester(access: TesterAccess): Promise<TesterRead> {
  const row = await database().tester.findUnique({ where: testerScope(access), select: OWN });
  if (row?.revision == null || row.acceptedAt === null) throw new AppError("not-found");
  const { contact, call, accountId, reports, unit, terms, acceptedAt } = row;
  const revision = toRevision(row.revision);
  const opening = call.opening === null ? null : openingSchema.parse(call.opening.document);
  const callZone = opening?.timeZone ?? NO_ZONE;
  const days = row.dates === null ? (opening?.dates ?? null) : testerDatesSchema.parse(row.dates);
  return {
    testerId: row.id,
    code: row.code,
    name: contact?.name ?? null,
    email: contact?.email ?? null,
    size: { id: row.size, label: revision.document.sizes.find(({ id }) => id === row.size)?.label ?? row.size },
    unit: unit === "in" ? "in" : "cm",
    terms: terms === "uk" ? "uk" : "us",
    timeZone: row.timeZone ?? callZone,
    dates: days === null ? null : testerMoments(days, callZone),
    acceptedAt,
    stoppedAt: row.stoppedAt,
    hasAccount: accountId !== null,
    reportedAt: reports[0]?.createdAt ?? null,
    call: {
      callId: call.id,
      title: call.title,
      status: call.status,
      designerName: call.pattern.memberships[0]?.account.name ?? "",
      invented: call.pattern.invented,
    },
    revision,
  };
}

const DESIGNER = { where: { role: "owner" as const }, take: 1, select: { account: { select: { name: true } } } };

const OWN = {
  id: true,
  code: true,
  size: true,
  unit: true,
  terms: true,
  timeZone: true,
  dates: true,
  acceptedAt: true,
  stoppedAt: true,
  accountId: true,
  contact: true,
  revision: { select: revisionSelect },
  reports: { orderBy: { version: "desc" as const }, take: 1, select: { createdAt: true } },
  call: {
    select: {
      id: true,
      title: true,
      status: true,
      opening: { select: { document: true } },
      pattern: { select: { invented: true, memberships: DESIGNER } },
    },
  },
};
