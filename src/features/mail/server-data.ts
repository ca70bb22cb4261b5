import "server-only";
import { database } from "@/server/database";

/** Whether the mail server takes mail. */
export interface MailServerState {
  readonly checkedAt: Date;
  readonly failingSince: Date | null;
  /** Its own words, where it does not. */
  readonly reply: string | null;
}

/** @returns null where nobody has asked it yet. */
export async function mailServerState(): Promise<MailServerState | null> {
  return await database().mailServer.findUnique({
    where: { id: 1 },
    select: { checkedAt: true, failingSince: true, reply: true },
  });
}
