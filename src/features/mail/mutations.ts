import "server-only";
import { randomUUID } from "node:crypto";
import { Prisma } from "@/generated/prisma/client";
import { environment } from "@/server/environment";
import type { Connection } from "@/server/transaction";
import { domainOf } from "./domain-of";
import { isMailOn } from "./mail-status";
import { contentSchema, type MessageContent, type MessageKind } from "./schema";

export interface NewMessage {
  readonly kind: MessageKind;
  /** Where the same may be asked for twice: a second message of it is not written. */
  readonly key?: string | undefined;
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
    readonly emailLinkId?: string;
  };
}

/**
 * Writes messages that the worker sends, as part of the transaction that causes them. Without a mail server nothing is
 * written: then designers copy their messages.
 */
export async function writeMessages(connection: Connection, messages: readonly NewMessage[]): Promise<void> {
  if (!isMailOn()) return;
  const data = messages.flatMap(({ kind, key = randomUUID(), address, content, about }) => {
    if (address === null) return [];
    const messageId = `<${key}@${domainOf(environment().MAIL_FROM)}>`;
    return [{ kind, messageId, address: address.toLowerCase(), content: contentSchema.parse(content), ...about }];
  });
  await connection.message.createMany({ data, skipDuplicates: true });
}

/**
 * Sends messages again that were given up, and tries their address again.
 *
 * @param where by the proof of whoever acts.
 */
export async function sendAgain(connection: Connection, where: Prisma.MessageWhereInput): Promise<void> {
  const given = { ...where, failedAt: { not: null }, content: { not: Prisma.DbNull } };
  const rows = await connection.message.findMany({ where: given, select: { id: true, address: true } });
  await connection.refusedAddress.deleteMany({ where: { address: { in: rows.map(({ address }) => address) } } });
  await connection.message.updateMany({
    where: { id: { in: rows.map(({ id }) => id) }, failedAt: { not: null } },
    data: { failedAt: null, dueAt: new Date(), attempts: 0 },
  });
}
