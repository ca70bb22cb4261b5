import "server-only";
import { applyingScope, publishedCall } from "@/features/openings/access";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { applicationScope, type ApplicationAccess } from "./access";
import { checkFree, RefusedError } from "./free-application";

/**
 * Takes an application back; a place that was offered to her and that she has not answered is declined by it.
 *
 * @throws {AppError} "changed-meanwhile" where it is withdrawn already, or she has accepted a place.
 */
export async function withdrawApplication(access: ApplicationAccess): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockCall(transaction, access);
    const now = new Date();
    await transaction.tester.updateMany({
      where: { ...offered(access), declinedAt: null, withdrawnAt: null },
      data: { declinedAt: now },
    });
    const { count } = await transaction.application.updateMany({
      where: {
        ...applicationScope(access),
        withdrawnAt: null,
        OR: [{ tester: null }, { tester: { acceptedAt: null } }],
      },
      data: { withdrawnAt: now, size: null, hold: null },
    });
    if (count === 0) throw new AppError("changed-meanwhile", MEANWHILE);
  });
}

/**
 * Lets a withdrawn application stand again, while the call takes applications and has room for it.
 *
 * @throws {RefusedError} "over" or "full"; {AppError} "changed-meanwhile" where it stands, or a place was offered to her.
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
 * Deletes an application with her contact, her body and all that she said. A place that she never accepted goes with it;
 * a test that she has accepted is another thing, and stays.
 */
export async function deleteApplication(access: ApplicationAccess): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockCall(transaction, access);
    await transaction.tester.deleteMany({ where: offered(access) });
    await transaction.application.deleteMany({ where: applicationScope(access) });
  });
}

/** Her place as a tester, as long as she has not accepted it. */
function offered(access: ApplicationAccess) {
  return { application: applicationScope(access), acceptedAt: null };
}

/** Holds the call's row, so that she is not invited in between. */
async function lockCall(transaction: Connection, { callId }: ApplicationAccess): Promise<void> {
  await transaction.$queryRaw`SELECT id FROM call WHERE id = ${callId}::uuid FOR UPDATE`;
}

const MEANWHILE = "Something has changed meanwhile. Reload the page to see how your application stands.";
