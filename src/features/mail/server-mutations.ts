import "server-only";
import type { PrismaClient } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { verifyServer } from "./deliver";
import { isMailOn } from "./mail-status";

/** What this process has stored last in a database, so that mail which is taken writes nothing more: null for a server that takes it. */
const stored = new WeakMap<PrismaClient, string | null>();

/** Stores whether the mail server takes mail. @param reply its own words where it does not; null where it does. */
export async function noteMailServer(reply: string | null, now = new Date()): Promise<void> {
  if (reply === stored.get(database())) return;
  const before = await database().mailServer.findUnique({ where: { id: 1 } });
  const failingSince = reply === null ? null : (before?.failingSince ?? now);
  const state = { checkedAt: now, failingSince, reply };
  await database().mailServer.upsert({ where: { id: 1 }, create: state, update: state });
  stored.set(database(), reply);
}

/** Signs in to the mail server without sending anything, and stores how that went. */
export async function checkMailServer(): Promise<void> {
  if (!isMailOn()) return;
  const reply = await verifyServer();
  stored.delete(database());
  await noteMailServer(reply);
}

/** The worker's job once it starts. @returns an id where mail is on. */
export function nextMailCheck(): Promise<string | null> {
  return Promise.resolve(isMailOn() ? "mail-server" : null);
}
