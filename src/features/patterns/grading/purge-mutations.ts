import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

/** Whoever asked has long left the page that showed it. */
const STORED_MS = 7 * 24 * 60 * 60_000;

/** A grading that nobody looks at any more, null where there is none. */
export async function nextGradingPurge(now = new Date()): Promise<string | null> {
  const row = await database().grading.findFirst({ where: old(now), select: { id: true } });
  return row?.id ?? null;
}

/** The worker's job: deletes what was asked and answered in all of those. */
export async function purgeGradings(now = new Date()): Promise<void> {
  await database().grading.deleteMany({ where: old(now) });
}

function old(now: Date): Prisma.GradingWhereInput {
  return { status: { not: "waiting" }, createdAt: { lt: new Date(now.getTime() - STORED_MS) } };
}
