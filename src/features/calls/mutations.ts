import "server-only";
import type { Places } from "@/engine/pattern";
import { patternEditScope, patternScope, type PatternAccess } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { enqueue } from "@/server/queue";
import type { Connection } from "@/server/transaction";

/** A new call of a pattern, open, with its places by size. @param connection a transaction that it is part of. */
export async function createCall(
  access: PatternAccess,
  { title, places }: { title: string; places: Places },
  connection: Connection,
): Promise<{ callId: string }> {
  const rows = Object.entries(places).map(([size, { least, wanted }]) => ({ size, least, wanted }));
  const pattern = await connection.pattern.update({
    where: patternEditScope(access),
    data: { calls: { create: { title, places: { create: rows } } } },
    select: { calls: { orderBy: { createdAt: "desc" }, take: 1, select: { id: true } } },
  });
  const [call] = pattern.calls;
  if (call === undefined) throw new Error("a call was made and is not there");
  await enqueue(connection, "reckon-call", call.id);
  return { callId: call.id };
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
 * Holds an open call's row until the transaction ends, so that writers take their turns and nobody closes it in between.
 *
 * @returns false where no open call is meant by it.
 */
export async function holdOpenCall(connection: Connection, where: Prisma.CallWhereInput): Promise<boolean> {
  const { count } = await connection.call.updateMany({ where: { ...where, status: "open" }, data: { status: "open" } });
  return count > 0;
}
