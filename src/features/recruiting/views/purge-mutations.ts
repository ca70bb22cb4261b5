import "server-only";
import { database } from "@/server/database";

const STORED_MS = 365 * 24 * 60 * 60_000;

/** A note of who looked that is older than a year, null where there is none. */
export async function nextViewPurge(now = new Date()): Promise<string | null> {
  const row = await database().dataView.findFirst({ where: old(now), select: { id: true } });
  return row?.id ?? null;
}

/** The worker's job: deletes all of those. */
export async function purgeViews(now = new Date()): Promise<void> {
  await database().dataView.deleteMany({ where: old(now) });
}

function old(now: Date) {
  return { day: { lt: new Date(now.getTime() - STORED_MS) } };
}
