import "server-only";
import { randomUUID } from "node:crypto";
import { Prisma } from "@/generated/prisma/client";
import { environment } from "@/server/environment";
import type { Connection } from "@/server/transaction";
import { domainOf } from "./domain-of";
import { isMailOn } from "./mail-state";
import { contentSchema, type MessageContent, type MessageKind } from "./schema";

interface NewMessage {
  readonly kind: MessageKind;
  /** Null where they gave none: then nothing is written. */
  readonly address: string | null;
  readonly content: MessageContent;
  /** Whom it is to or about: their deletion deletes it. */
  readonly about: {
    readonly callId?: string;
    readonly applicationId?: string | null;
    readonly testerId?: string;
    /** Of whoever gets it. */
    readonly accountId?: string;
  };
}

/**
 * Writes a message that the worker sends, as part of the transaction that causes it. Without a mail server nothing is
 * written: then designers copy their messages.
 */
export async function writeMessage(
  connection: Connection,
  { kind, address, content, about }: NewMessage,
): Promise<void> {
  if (!isMailOn() || address === null) return;
  await connection.message.create({
    data: {
      ...{ kind, address: address.toLowerCase(), content: contentSchema.parse(content), ...about },
      messageId: `<${randomUUID()}@${domainOf(environment().MAIL_FROM)}>`,
    },
  });
}

/**
 * Sends messages again that were given up, and tries their address again.
 *
 * @param where by the proof of whoever acts.
 * @returns how many.
 */
export async function sendAgain(connection: Connection, where: Prisma.MessageWhereInput): Promise<number> {
  const given = { ...where, failedAt: { not: null }, content: { not: Prisma.DbNull } };
  const rows = await connection.message.findMany({ where: given, select: { id: true, address: true } });
  await connection.refusedAddress.deleteMany({ where: { address: { in: rows.map(({ address }) => address) } } });
  const { count } = await connection.message.updateMany({
    where: { id: { in: rows.map(({ id }) => id) }, failedAt: { not: null } },
    data: { failedAt: null, dueAt: new Date(), attempts: 0 },
  });
  return count;
}
