import "server-only";
import { applyingScope, publishedCall } from "../../listing/access";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { applicationScope, type ApplicationAccess } from "../access";
import { writeDeclined } from "../../invitations/declined-mutations";
import { checkFree, RefusedError } from "../check-free";

/**
 * Withdraws an application; an unanswered invitation is declined with it.
 *
 * @throws {AppError} "changed-meanwhile" if it was withdrawn already, or a spot was accepted.
 */
export async function withdrawApplication(access: ApplicationAccess): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockCall(transaction, access);
    const now = new Date();
    const declined = await transaction.tester.updateMany({
      where: { ...offered(access), declinedAt: null, withdrawnAt: null },
      data: { declinedAt: now },
    });
    if (declined.count > 0) await writeDeclined(transaction, offered(access));
    const { count } = await transaction.application.updateMany({
      where: {
        ...applicationScope(access),
        withdrawnAt: null,
        OR: [{ tester: null }, { tester: { acceptedAt: null } }],
      },
      data: { withdrawnAt: now, size: null, pin: null },
    });
    if (count === 0) throw new AppError("changed-meanwhile", MEANWHILE);
  });
}

/**
 * Resubmits a withdrawn application, while the call takes applications and has room for it.
 *
 * @throws {RefusedError} "over" or "full"; {AppError} "changed-meanwhile" if it is not withdrawn, or was invited.
 */
export async function takeUpAgain(access: ApplicationAccess): Promise<void> {
  const call = await publishedCall(access.callId).catch(() => null);
  if (call === null) throw new RefusedError("over");
  await inTransaction(async (transaction) => {
    const taking = await transaction.call.updateMany({
      where: applyingScope(call, new Date()),
      data: { status: "open" },
    });
    if (taking.count === 0) throw new RefusedError("over");
    await checkFree(transaction, call);
    const { count } = await transaction.application.updateMany({
      where: { ...applicationScope(access), withdrawnAt: { not: null }, tester: null },
      data: { withdrawnAt: null },
    });
    if (count === 0) throw new AppError("changed-meanwhile", MEANWHILE);
  });
}

/**
 * Deletes an application with contact, body measurements and answers. A spot that was never accepted is deleted too; a test
 * that was accepted stays.
 */
export async function deleteApplication(access: ApplicationAccess): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockCall(transaction, access);
    await transaction.tester.deleteMany({ where: offered(access) });
    await transaction.application.deleteMany({ where: applicationScope(access) });
  });
}

/** The applicant's row as a tester, unless it is accepted. */
function offered(access: ApplicationAccess) {
  return { application: applicationScope(access), acceptedAt: null };
}

/** Locks the call's row, so that no invitation is sent in between. */
async function lockCall(transaction: Connection, { callId }: ApplicationAccess): Promise<void> {
  await transaction.$queryRaw`SELECT id FROM call WHERE id = ${callId}::uuid FOR UPDATE`;
}

const MEANWHILE = "Something has changed in the meantime. Reload the page to see the state of your application.";
