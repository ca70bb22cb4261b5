import "server-only";
import { database } from "@/server/database";

const STORED_MS = 14 * 24 * 60 * 60_000;

/** A mailed link that expired so long ago that nothing of it need be known, null where there is none. */
export async function nextEmailLinkPurge(now = new Date()): Promise<string | null> {
  const row = await database().emailLink.findFirst({ where: old(now), select: { id: true } });
  return row?.id ?? null;
}

/** The worker's job: deletes all of those, with their addresses and messages. */
export async function purgeEmailLinks(now = new Date()): Promise<void> {
  await database().emailLink.deleteMany({ where: old(now) });
}

function old(now: Date) {
  return { expiresAt: { lt: new Date(now.getTime() - STORED_MS) } };
}
