import "server-only";
import type { LinkTarget } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
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

/** What mail to an applicant reads of them. */
export const mailedApplicantSelect = {
  ...{ id: true, callId: true, decision: true, contact: { select: { name: true, email: true } } },
  call: { select: { title: true, status: true, pattern: { select: { memberships: signingDesigner } } } },
} satisfies Prisma.ApplicationSelect;

type Row = Prisma.ApplicationGetPayload<{ select: typeof mailedApplicantSelect }>;
