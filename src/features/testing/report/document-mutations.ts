import "server-only";
import { randomUUID } from "node:crypto";
import type { CallDocument, PatternDocument } from "@/engine/pattern";
import { callEditScope, proveCall, type CallAccess } from "@/features/calls/access";
import { createCall, firstCallOf } from "@/features/calls/mutations";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { Prisma } from "@/generated/prisma/client";
import { addReports } from "./mutations";
import { inTransaction, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";

const REASON = "Imported from a file";

/** Stores an imported pattern, once per key. */
export async function storePattern(
  viewer: Viewer,
  { document, idempotencyKey }: { document: PatternDocument; idempotencyKey?: string },
): Promise<{ patternId: string }> {
  return await createPattern(viewer, { document, reason: REASON, idempotencyKey });
}

/**
 * Stores a pattern, its call, the places and every tester with the report: all of it or, if anything fails, nothing. The same
 * key again stores nothing, and returns what is stored.
 */
export async function storeCall(
  viewer: Viewer,
  { call, title, idempotencyKey }: { call: CallDocument; title: string; idempotencyKey?: string },
): Promise<{ patternId: string; callId: string }> {
  return await inTransaction(async (transaction) => {
    const document = call.pattern;
    const created = await createPattern(viewer, { document, reason: REASON, idempotencyKey }, transaction);
    const { patternId, revisionId, isNew } = created;
    const pattern = await provePattern(transaction, { viewer, patternId, least: "owner" });
    if (!isNew) return { patternId, callId: await firstCallOf(pattern, transaction) };
    const { callId } = await createCall(pattern, { title, places: call.places }, transaction);
    const access = await proveCall(transaction, { viewer, callId, least: "owner" });
    if (call.testers.length > 0) await keepPrior(access, call, transaction);
    const reports = call.testers.map((tester) => ({ tester, typed: {}, idempotencyKey: randomUUID() }));
    await addReports(access, { revision: { revisionId, document }, reports }, transaction);
    return { patternId, callId };
  });
}

/** A call that is brought in with reports gives the numbers that its file gives: with its prior or, where it has none, without. */
async function keepPrior(access: CallAccess, { prior }: CallDocument, connection: Connection): Promise<void> {
  const data = { prior: prior === undefined ? Prisma.DbNull : { ...prior }, priorAt: new Date() };
  await connection.call.update({ where: callEditScope(access), data });
}
