import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "./database";

/** The database, or a transaction in it, whose writes succeed or fail together. */
export type Connection = Prisma.TransactionClient;

/** Writing thousands of rows takes longer than the five seconds a transaction has by default. */
const TRANSACTION_MS = 120_000;

/**
 * Runs `write` completely or, if anything in it throws, not at all.
 *
 * @param within a transaction that is open already: `write` becomes part of it.
 */
export async function inTransaction<Result>(
  write: (connection: Connection) => Promise<Result>,
  within?: Connection,
): Promise<Result> {
  if (within) return await write(within);
  return await database().$transaction(write, { timeout: TRANSACTION_MS });
}

/** Reads one snapshot, unaffected by concurrent writes. */
export async function inSnapshot<Result>(read: (connection: Connection) => Promise<Result>): Promise<Result> {
  return await database().$transaction(read, { timeout: TRANSACTION_MS, isolationLevel: "RepeatableRead" });
}
