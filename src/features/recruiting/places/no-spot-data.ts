import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { isMailOn } from "@/features/mail/mail-status";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

/** Applicants without a spot who have not been told so, once nobody can apply any more: until then it can change. */
export function untoldApplicants(access: CallAccess, now: Date): Prisma.ApplicationWhereInput {
  return {
    call: { ...callEditScope(access), OR: [{ status: "closed" }, { listing: { applyUntil: { lte: now } } }] },
    ...{ withdrawnAt: null, tester: null, contact: { isNot: null } },
    messages: { none: { kind: "no-place" } },
  };
}

/** How many applicants can be told by mail that they have no spot. */
export async function countUntold(access: CallAccess, now: Date): Promise<number> {
  return isMailOn() ? await database().application.count({ where: untoldApplicants(access, now) }) : 0;
}
