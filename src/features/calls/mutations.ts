import "server-only";
import { randomUUID } from "node:crypto";
import type { Places } from "@/engine/pattern";
import { usualMost } from "@/engine/places";
import { patternEditScope, patternScope, type PatternAccess } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import type { Connection } from "@/server/transaction";
import { openCallEditScope, type CallAccess } from "./access";

interface NewCall {
  readonly title: string;
  readonly places: Places;
  /** Idempotency key of the form; the same key again makes no second call. */
  readonly idempotencyKey?: string;
}

/**
 * A new open call of a pattern with its tester spots by size; or the one that the same request has made already.
 *
 * @param connection a transaction that it is part of.
 * @throws {AppError} "not-found" where the key is another pattern's; "not-allowed" where the pattern is archived.
 */
export async function createCall(
  access: PatternAccess,
  { title, places, idempotencyKey }: NewCall,
  connection: Connection,
): Promise<{ callId: string; isNew: boolean }> {
  await refuseArchived(connection, patternScope(access));
  const callId = randomUUID();
  // A repeated request waits here until the first is finished, and then inserts nothing.
  const made = { createMany: { data: [{ id: callId, title, idempotencyKey }], skipDuplicates: true } };
  const pattern = await connection.pattern.update({
    where: patternEditScope(access),
    data: { calls: made },
    select: {
      calls: { where: { OR: [{ id: callId }, { idempotencyKey: idempotencyKey ?? callId }] }, select: { id: true } },
    },
  });
  const [call] = pattern.calls;
  if (call === undefined) throw new AppError("not-found");
  if (call.id !== callId) return { callId: call.id, isNew: false };
  await connection.place.createMany({ data: placeRows(callId, places) });
  return { callId, isNew: true };
}

/** No test is open of an archived pattern. @throws {AppError} "not-allowed" where one of these patterns is archived. */
export async function refuseArchived(connection: Connection, where: Prisma.PatternWhereInput): Promise<void> {
  const archived = await connection.pattern.count({ where: { ...where, archivedAt: { not: null } } });
  if (archived > 0)
    throw new AppError("not-allowed", "This pattern is archived. Bring it back on its page, then start a test.");
}

/** A call's places as rows. */
export function placeRows(callId: string, places: Places): Prisma.PlaceCreateManyInput[] {
  return Object.entries(places).map(([size, { least, wanted, most = usualMost(wanted) }]) => ({
    ...{ callId, size, least, wanted, most },
  }));
}

/** The call that a pattern was first tested by. @throws {AppError} "not-found" where there is none any more. */
export async function firstCallOf(access: PatternAccess, connection: Connection): Promise<string> {
  const call = await connection.call.findFirst({
    where: { pattern: patternScope(access) },
    orderBy: { createdAt: "asc" },
    select: { id: true },
  });
  if (call === null) throw new AppError("not-found");
  return call.id;
}

/**
 * Locks an open call's row until the transaction ends, so that writers take turns and nobody closes it in between.
 *
 * @returns false where no open call is meant by it.
 */
export async function holdOpenCall(connection: Connection, where: Prisma.CallWhereInput): Promise<boolean> {
  const { count } = await connection.call.updateMany({ where: { ...where, status: "open" }, data: { status: "open" } });
  return count > 0;
}

/**
 * Has the call analysed again because something that its analysis reads has changed. The caller must lock the call's row in the first statement of the transaction, so that no write is lost on an older version.
 */
export async function raiseCallVersion(connection: Connection, callId: string): Promise<void> {
  const data = { version: { increment: 1 }, versionRaisedAt: new Date() };
  await connection.call.update({ where: { id: callId }, data, select: { id: true } });
}

/**
 * Locks a call's row, open or closed, until the transaction ends, so that writers take turns.
 *
 * @param where further conditions, such as the writer's role, or a version that it must still have.
 * @returns false where no call meets them.
 */
export async function holdCall(connection: Connection, id: string, where: Prisma.CallWhereInput): Promise<boolean> {
  const { count } = await connection.call.updateMany({ where: { AND: [where, { id }] }, data: { id } });
  return count > 0;
}

/** Locks an open call's row for an editor. @throws {AppError} "closed" where it is closed, or not theirs to edit. */
export async function lockOpenCall(connection: Connection, access: CallAccess): Promise<void> {
  if (!(await holdOpenCall(connection, openCallEditScope(access)))) throw new AppError("closed");
}
