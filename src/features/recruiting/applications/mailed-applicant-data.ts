import "server-only";
import type { LinkTarget } from "@/features/mail/schema";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { signingDesigner } from "../invitations/mailed-tester-data";
import { applicationTarget } from "./access";

/** An applicant as mail to them names them and the test. */
export interface MailedApplicant {
  readonly title: string;
  /** They were declined, or the test is closed; else a spot can still open up. */
  readonly isFinal: boolean;
  /** The address of their own page. */
  readonly ownLink: LinkTarget;
}

export function mailedApplicant({ id, decision, call: { title, status } }: Row): MailedApplicant {
  return { title, isFinal: decision === "no" || status === "closed", ownLink: applicationTarget(id) };
}

/** An applicant whose mail is shown to the designer. */
export interface ShownApplicant {
  readonly applicationId: string;
  readonly name: string;
  /** Who signs. */
  readonly from: string;
  readonly applicant: MailedApplicant;
}

/** Applicants of the call who have not withdrawn, for a designer who may change what they get. */
export async function shownApplicants(access: CallAccess): Promise<ShownApplicant[]> {
  const rows = await database().application.findMany({
    where: { call: callEditScope(access), withdrawnAt: null, contact: { isNot: null } },
    orderBy: { position: "asc" },
    select: mailedApplicantSelect,
  });
  return rows.map((row) => ({
    ...{ applicationId: row.id, name: row.contact?.name ?? "", applicant: mailedApplicant(row) },
    from: row.call.pattern.memberships[0]?.account.name ?? "",
  }));
}

/** What mail to an applicant reads of them. */
export const mailedApplicantSelect = {
  ...{ id: true, callId: true, decision: true, contact: { select: { name: true, email: true } } },
  call: { select: { title: true, status: true, pattern: { select: { memberships: signingDesigner } } } },
} satisfies Prisma.ApplicationSelect;

type Row = Prisma.ApplicationGetPayload<{ select: typeof mailedApplicantSelect }>;
