import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import {
  inviteApplicants,
  sizesTaken,
  tooManyTesters,
  tooManyWords,
} from "@/features/recruiting/invitations/mutations";
import { inTransaction, type Connection } from "@/server/transaction";
import { placingRows, type Applicant, type PlacingRows } from "./data";
import { NO_SIZE_YET } from "./offer-copy";
import { sizeLabel } from "../applications/own/stored-list";
import { placedNow } from "./placing";

interface Offering {
  readonly applicationIds: readonly string[];
  /** The deadline for an answer. */
  readonly expiresAt: Date;
}

/** Names of those who are invited now, and of the others with the reason. */
export interface Offered {
  readonly invited: readonly string[];
  readonly refused: readonly { readonly name: string; readonly why: string }[];
}

/**
 * Invites those of some applicants who have a size and no invitation, in the order of their applications and as far as
 * the most testers of each size. Ids of other calls are skipped.
 *
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit.
 */
export async function offerPlaces(access: CallAccess, { applicationIds, expiresAt }: Offering): Promise<Offered> {
  return await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const rows = await placingRows(access, transaction);
    const chosen = rows.applicants.filter(({ applicationId }) => applicationIds.includes(applicationId));
    const { invited, refused } = await offerTo(access, { rows, chosen, expiresAt }, transaction);
    const gone = await noLongerWaiting(transaction, access, { applicationIds, waiting: chosen });
    return { invited, refused: [...refused, ...gone] };
  });
}

interface Chosen extends Pick<Offering, "expiresAt"> {
  readonly rows: PlacingRows;
  /** Applicants of those rows. */
  readonly chosen: readonly Applicant[];
}

/**
 * Invites each of the chosen to the size in which they stand, as far as the most testers of each size.
 *
 * @param transaction in which the call's row is locked.
 */
export async function offerTo(
  access: CallAccess,
  { rows, chosen, expiresAt }: Chosen,
  transaction: Connection,
): Promise<Offered> {
  const sizes = new Map(placedNow(rows).map(({ applicant, size }) => [applicant.applicationId, size]));
  const taken = await sizesTaken(transaction, callEditScope(access));
  const invitations: { applicationId: string; size: string }[] = [];
  const [invited, refused]: [string[], { name: string; why: string }[]] = [[], []];
  for (const { applicationId, name, decision } of chosen) {
    const size = sizes.get(applicationId);
    if (size === undefined) {
      refused.push({ name, why: decision === "no" ? "You declined them." : NO_SIZE_YET });
      continue;
    }
    const full = tooManyTesters(taken, { sizes: [size], assigned: invitations.map((each) => each.size) });
    if (full !== null) refused.push({ name, why: tooManyWords(sizeLabel(rows.pattern, size), full) });
    else {
      invitations.push({ applicationId, size });
      invited.push(name);
    }
  }
  if (invitations.length > 0) await inviteApplicants(access, { invitations, expiresAt }, transaction);
  return { invited, refused };
}

/** Those of the chosen who have withdrawn or are invited already. */
async function noLongerWaiting(
  transaction: Connection,
  access: CallAccess,
  { applicationIds, waiting }: { readonly applicationIds: readonly string[]; readonly waiting: readonly Applicant[] },
): Promise<Offered["refused"]> {
  const rows = await transaction.application.findMany({
    where: {
      id: { in: [...applicationIds], notIn: waiting.map(({ applicationId }) => applicationId) },
      call: callEditScope(access),
    },
    orderBy: { position: "asc" },
    select: { position: true, withdrawnAt: true, contact: { select: { name: true } } },
  });
  return rows.map(({ position, withdrawnAt, contact }) => ({
    name: contact?.name ?? `Applicant ${position + 1}`,
    why: withdrawnAt === null ? "They are invited already." : "They have withdrawn.",
  }));
}
