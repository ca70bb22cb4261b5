import "server-only";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { applyingScope, type PublishedCall } from "@/features/recruiting/listing/access";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { writeToApplicants } from "./applicant-mail-mutations";
import { receivedContent } from "./apply/received-copy";
import { checkFree, RefusedError } from "./check-free";
import type { ApplicationDocument, ApplicationDecision } from "./schema";

export interface NewApplication {
  readonly name: string;
  readonly email: string;
  readonly document: ApplicationDocument;
  readonly measurements: Readonly<Record<string, number>>;
  readonly typed: Readonly<Record<string, string>>;
  /** The signed-in account. */
  readonly accountId: string | null;
  /** The version that was read and agreed to. */
  readonly agreementVersion: number;
  /** Sending the same form again has the same key, and is stored once. */
  readonly idempotencyKey: string;
}

/**
 * Stores an application. A lock on the call lets applications in one at a time, so the limit holds; unique indexes find
 * people who have applied before.
 *
 * @returns its id, also if the same form was stored before.
 * @throws {RefusedError} if the call refuses it.
 */
export async function storeApplication(call: PublishedCall, application: NewApplication): Promise<string> {
  try {
    return await inTransaction(async (transaction) => {
      const stored = await lockForApplying(transaction, call, application.idempotencyKey);
      if (stored !== null) return stored;
      await checkFree(transaction, call);
      await checkAgreement(transaction, call, application.agreementVersion);
      return await insert(transaction, call, application);
    });
  } catch (error) {
    throw isTaken(error) ? new RefusedError("known") : error;
  }
}

/** Locks the call's row if it takes applications. @returns the application that this form has created before, if any. */
async function lockForApplying(
  transaction: Connection,
  call: PublishedCall,
  idempotencyKey: string,
): Promise<string | null> {
  const { count } = await transaction.call.updateMany({
    where: applyingScope(call, new Date()),
    data: { status: "open" },
  });
  const stored = await transaction.application.findUnique({
    where: { idempotencyKey, callId: call.callId },
    select: { id: true },
  });
  if (stored !== null) return stored.id;
  if (count === 0) throw new RefusedError("over");
  return null;
}

async function checkAgreement(transaction: Connection, { callId }: PublishedCall, version: number): Promise<void> {
  const newest = await transaction.agreement.aggregate({ where: { callId }, _max: { version: true } });
  if (newest._max.version !== version) throw new RefusedError("agreement");
}

async function insert(transaction: Connection, { callId }: PublishedCall, application: NewApplication) {
  const { name, email, measurements, typed, ...row } = application;
  const last = await transaction.application.aggregate({ where: { callId }, _max: { position: true } });
  const { id } = await transaction.application.create({
    data: {
      ...row,
      callId,
      position: (last._max.position ?? -1) + 1,
      agreedAt: new Date(),
      contact: { create: { callId, name, email } },
      body: { create: { measurements, typed } },
    },
    select: { id: true },
  });
  const applications = { id, callId };
  await writeToApplicants(transaction, { kind: "application-received", applications, content: receivedContent });
  return id;
}

/** A unique index refused the row. */
function isTaken(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002";
}

/**
 * Stores one decision on several applications. Those that were withdrawn, are invited or are of another call stay as they are.
 *
 * @returns how many have it now.
 * @throws {AppError} "changed-meanwhile" if none of them can have it.
 */
export async function storeDecisions(
  access: CallAccess,
  { applicationIds, decision }: { applicationIds: readonly string[]; decision: ApplicationDecision },
): Promise<number> {
  const { count } = await database().application.updateMany({
    where: { id: { in: [...applicationIds] }, withdrawnAt: null, tester: null, call: openCallEditScope(access) },
    data: { decision },
  });
  if (count === 0)
    throw new AppError(
      "changed-meanwhile",
      "Nothing was changed: those whom you chose have withdrawn, are invited already, or the test is closed.",
    );
  return count;
}

/**
 * Stores the designer's decision on an application; null clears it.
 *
 * @throws {AppError} "changed-meanwhile" if the application is withdrawn or its call is closed; "not-found" if it is gone or the viewer may not edit it.
 */
export async function storeDecision(
  access: CallAccess,
  { applicationId, decision }: { applicationId: string; decision: ApplicationDecision | null },
): Promise<void> {
  const { count } = await database().application.updateMany({
    where: { id: applicationId, withdrawnAt: null, call: openCallEditScope(access) },
    data: { decision },
  });
  if (count > 0) return;
  const here = await database().application.count({ where: { id: applicationId, call: callEditScope(access) } });
  if (here === 0) throw new AppError("not-found");
  throw new AppError(
    "changed-meanwhile",
    "This application was withdrawn or the test was closed in the meantime. Reload the page.",
  );
}
