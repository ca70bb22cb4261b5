import "server-only";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { applyingScope, type PublishedCall } from "@/features/openings/access";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { checkFree, RefusedError } from "./free-application";
import type { ApplicationDocument, ApplicationWord } from "./schema";

export interface NewApplication {
  readonly name: string;
  readonly email: string;
  readonly document: ApplicationDocument;
  readonly measurements: Readonly<Record<string, number>>;
  readonly typed: Readonly<Record<string, string>>;
  /** Of who is signed in. */
  readonly accountId: string | null;
  /** The version that she read and agreed to. */
  readonly agreementVersion: number;
  /** The same sending has the same key, and is stored once. */
  readonly submissionKey: string;
}

/**
 * Stores an application. Applications of a call come one after another, so that two for the last place are one too many;
 * that a person has applied already is found by the unique indexes.
 *
 * @returns its id, also where the same sending is stored already.
 * @throws {RefusedError} where the call does not take it.
 */
export async function storeApplication(call: PublishedCall, application: NewApplication): Promise<string> {
  try {
    return await inTransaction(async (transaction) => {
      const stored = await lockForApplying(transaction, call, application.submissionKey);
      if (stored !== null) return stored;
      await checkFree(transaction, call);
      await checkAgreement(transaction, call, application.agreementVersion);
      return await insert(transaction, call, application);
    });
  } catch (error) {
    throw isTaken(error) ? new RefusedError("known") : error;
  }
}

/** Holds the call's row while it takes applications. @returns the application that this sending has made already. */
async function lockForApplying(
  transaction: Connection,
  call: PublishedCall,
  submissionKey: string,
): Promise<string | null> {
  const { count } = await transaction.call.updateMany({
    where: applyingScope(call, new Date()),
    data: { status: "open" },
  });
  const stored = await transaction.application.findUnique({
    where: { submissionKey, callId: call.callId },
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
  return id;
}

/** A row that a unique index refused. */
function isTaken(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002";
}

/**
 * What the designer thinks of an application; null takes it back.
 *
 * @throws {AppError} "changed-meanwhile" where it is withdrawn or gone, its call closed, or not the viewer's to edit.
 */
export async function sayWord(
  access: CallAccess,
  { applicationId, word }: { applicationId: string; word: ApplicationWord | null },
): Promise<void> {
  const { count } = await database().application.updateMany({
    where: { id: applicationId, withdrawnAt: null, call: openCallEditScope(access) },
    data: { word },
  });
  if (count > 0) return;
  const here = await database().application.count({ where: { id: applicationId, call: callEditScope(access) } });
  if (here === 0) throw new AppError("not-found");
  throw new AppError(
    "changed-meanwhile",
    "This application was withdrawn, or the call closed, meanwhile. Reload the page.",
  );
}
