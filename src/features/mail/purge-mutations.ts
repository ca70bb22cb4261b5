import "server-only";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

const DAY_MS = 24 * 60 * 60 * 1_000;
/** For so long the words of a message are stored once it is sent, or given up. */
const STORED_DAYS = 14;

/** A message whose words are to be deleted, null where there is none. */
export async function nextPurge(now = new Date()): Promise<string | null> {
  const row = await database().message.findFirst({ where: overdue(now), select: { id: true } });
  return row?.id ?? null;
}

/** The worker's job: deletes the words of all messages that are old enough. That they were sent stays known. */
export async function purgeMessages(now = new Date()): Promise<void> {
  // They are of no test alone, so nothing else would ever delete their address.
  await database().message.deleteMany({ where: { ...overdue(now), kind: "own-links" } });
  await database().message.updateMany({ where: overdue(now), data: { content: Prisma.DbNull } });
}

function overdue(now: Date): Prisma.MessageWhereInput {
  const before = new Date(now.getTime() - STORED_DAYS * DAY_MS);
  return { content: { not: Prisma.DbNull }, OR: [{ sentAt: { lt: before } }, { failedAt: { lt: before } }] };
}
