import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import type { Prisma } from "@/generated/prisma/client";
import { invitationState, type InvitationState } from "@/features/calls/tester-status";
import { database } from "@/server/database";
import {
  applicationSchema,
  measurementsSchema,
  typedBodySchema,
  type ApplicationDocument,
  type ApplicationDecision,
} from "./schema";
import { TESTER_SELECTED } from "./tester-selected";

export interface CallApplication {
  readonly applicationId: string;
  /** Its position in the order of arrival. */
  readonly position: number;
  readonly name: string;
  readonly email: string;
  /** Body measurement -> cm; null if withdrawn: then the body is no longer read. */
  readonly measurements: Readonly<Record<string, number>> | null;
  /** The same as typed. */
  readonly typed: Readonly<Record<string, string>>;
  readonly document: ApplicationDocument;
  readonly createdAt: Date;
  readonly withdrawnAt: Date | null;
  readonly decision: ApplicationDecision | null;
  /** The size from the last assignment. */
  readonly size: string | null;
  readonly pin: "size" | "waiting" | null;
  readonly agreementVersion: number;
  /** Null if never invited. */
  readonly tester: { readonly testerId: string; readonly size: string; readonly state: InvitationState } | null;
}

/**
 * The applications of a call in the order of arrival, withdrawn ones included.
 *
 * @param the applications to read; all if omitted.
 */
export async function callApplications(access: CallAccess, ids?: readonly string[]): Promise<CallApplication[]> {
  const rows = await database().application.findMany({
    where: { call: callScope(access), ...(ids === undefined ? {} : { id: { in: [...ids] } }) },
    orderBy: { position: "asc" },
    select: SELECTED,
  });
  const now = new Date();
  return rows.map((row) => toCallApplication(row, now));
}

const SELECTED = {
  ...{ id: true, position: true, document: true, createdAt: true, withdrawnAt: true, decision: true, size: true },
  ...{ pin: true, agreementVersion: true },
  contact: { select: { name: true, email: true } },
  body: { select: { measurements: true, typed: true } },
  tester: { select: TESTER_SELECTED },
} satisfies Prisma.ApplicationSelect;

type Row = Prisma.ApplicationGetPayload<{ select: typeof SELECTED }>;

function toCallApplication({ id, document, contact, body, tester, ...row }: Row, now: Date): CallApplication {
  const seen = row.withdrawnAt === null ? body : null;
  return {
    ...row,
    applicationId: id,
    name: contact?.name ?? "",
    email: contact?.email ?? "",
    measurements: seen === null ? null : measurementsSchema.parse(seen.measurements),
    typed: typedBodySchema.parse(seen?.typed ?? {}),
    document: applicationSchema.parse(document),
    tester: tester === null ? null : { testerId: tester.id, size: tester.size, state: invitationState(tester, now) },
  };
}
