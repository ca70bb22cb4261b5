import "server-only";
import { database } from "@/server/database";
import { verifyServer } from "./deliver";
import { isMailOn } from "./mail-status";

/** What this process has stored last, so that mail which is taken writes nothing more: null for a server that takes it. */
let stored: string | null | undefined;

/** Stores whether the mail server takes mail. @param reply its own words where it does not; null where it does. */
export async function noteMailServer(reply: string | null, now = new Date()): Promise<void> {
  if (reply === stored) return;
  const before = await database().mailServer.findUnique({ where: { id: 1 } });
  const failingSince = reply === null ? null : (before?.failingSince ?? now);
  const state = { checkedAt: now, failingSince, reply };
  await database().mailServer.upsert({ where: { id: 1 }, create: state, update: state });
  stored = reply;
}

/** Signs in to the mail server without sending anything, and stores how that went. */
export async function checkMailServer(): Promise<void> {
  if (!isMailOn()) return;
  const reply = await verifyServer();
  stored = undefined;
  await noteMailServer(reply);
}

/** The worker's job once it starts. @returns an id where mail is on. */
export function nextMailCheck(): Promise<string | null> {
  return Promise.resolve(isMailOn() ? "mail-server" : null);
}
