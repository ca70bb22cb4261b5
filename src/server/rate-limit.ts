import "server-only";
import { createHash } from "node:crypto";
import type { Pool } from "pg";
import { RateLimiterPostgres, RateLimiterRes } from "rate-limiter-flexible";
import { pool } from "./database";
import { AppError } from "./errors";

export interface Limit {
  readonly name: string;
  /** How many attempts within that time. */
  readonly tries: number;
  readonly withinSeconds: number;
}

// One per limit and pool, because each removes expired rows from the table from time to time.
const limiters = new WeakMap<Pool, Map<string, RateLimiterPostgres>>();

function limiter({ name, tries, withinSeconds }: Limit): RateLimiterPostgres {
  const storeClient = pool();
  const ofPool = limiters.get(storeClient) ?? new Map<string, RateLimiterPostgres>();
  limiters.set(storeClient, ofPool);
  const known = ofPool.get(name);
  if (known !== undefined) return known;
  const made = new RateLimiterPostgres({
    storeClient,
    storeType: "pool",
    tableName: "rate_limit",
    tableCreated: true,
    keyPrefix: name,
    points: tries,
    duration: withinSeconds,
  });
  ofPool.set(name, made);
  return made;
}

/** People are stored as hashes, so that the table does not reveal who tried. */
function keyOf(whom: string): string {
  return createHash("sha256").update(whom).digest("hex");
}

/** Counts an attempt before it is made, so that parallel attempts count too. @throws {AppError} "too-many-tries", and when to come back. */
export async function consumeAttempt(limit: Limit, whom: string): Promise<void> {
  try {
    await limiter(limit).consume(keyOf(whom));
  } catch (error) {
    if (!(error instanceof RateLimiterRes)) throw error;
    throw new AppError("too-many-tries", `Too many attempts. Try again in ${waiting(error.msBeforeNext)}.`);
  }
}

/** Uncounts an attempt that succeeded. */
export async function refundAttempt(limit: Limit, whom: string): Promise<void> {
  await limiter(limit).reward(keyOf(whom));
}

/** Resets a person's attempts. */
export async function forgetTries(limit: Limit, whom: string): Promise<void> {
  await limiter(limit).delete(keyOf(whom));
}

function waiting(ms: number): string {
  const minutes = Math.ceil(ms / 60_000);
  if (minutes <= 1) return "a minute";
  return minutes <= 90 ? `${minutes} minutes` : `${Math.ceil(minutes / 60)} hours`;
}
