import "server-only";
import { setTimeout as pause } from "node:timers/promises";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { environment } from "@/server/environment";
import { linkTo } from "@/server/link-key";
import { log } from "@/server/log";
import { inTransaction } from "@/server/transaction";
import { wholeAddress } from "@/server/whole-address";
import { isMailOn } from "./mail-status";
import { messageHtml } from "./message-html";
import { messageText, type WrittenMessage } from "./message-text";
import { contentSchema, type LinkTarget } from "./schema";
import { afterAttempts, afterServerFailures, MOST_ATTEMPTS } from "./send-again-after";
import { deliver, type Delivery } from "./deliver";
import { noteMailServer } from "./server-mutations";

/** Longer than a mail server can take: a message is tried again if this process ended while it was sent. */
const LEASE_MS = 15 * 60_000;
const RECORD_AGAIN_MS = 1_000;

/** While the mail server is away it is asked by one message at a time. */
const server = { failures: 0, restUntilMs: 0 };

/** The message that is due the longest, null where none is. */
export async function nextMessage(): Promise<string | null> {
  const now = new Date();
  if (!isMailOn() || now.getTime() < server.restUntilMs) return null;
  const row = await database().message.findFirst({
    where: { dueAt: { lte: now } },
    orderBy: { dueAt: "asc" },
    select: { id: true },
  });
  return row?.id ?? null;
}

/**
 * The worker's job: sends a message and records what the server said. A message that may have been taken, because the
 * server's last answer was lost, is sent again with the same Message-ID.
 */
export async function sendMessage(id: string): Promise<void> {
  const row = await take(id);
  if (row === null) return;
  const refused = await database().refusedAddress.findUnique({ where: { address: row.address } });
  const delivery: Delivery =
    refused === null ? await deliver(mailOf(row)) : { status: "refused", reply: refused.reply, isAddress: true };
  await noteServer(delivery);
  // What was sent is sent once, though the database is unavailable for a moment.
  for (;;) {
    try {
      return await record(row, delivery);
    } catch (error) {
      if (!isDatabaseUnavailable(error)) throw error;
      await pause(RECORD_AGAIN_MS);
    }
  }
}

interface TakenMessage {
  readonly id: string;
  readonly messageId: string;
  readonly address: string;
  readonly content: unknown;
  /** With this one. */
  readonly attempts: number;
}

/** Takes a message for as long as sending it may last. @returns null if it is gone, or another worker took it. */
async function take(id: string): Promise<TakenMessage | null> {
  const now = new Date();
  const [row] = await database().message.updateManyAndReturn({
    where: { id, dueAt: { lte: now } },
    data: { dueAt: new Date(now.getTime() + LEASE_MS), attempts: { increment: 1 } },
    select: { id: true, messageId: true, address: true, content: true, attempts: true },
  });
  return row ?? null;
}

function mailOf({ messageId, address, content }: TakenMessage) {
  const { parts, fewer, ...said } = contentSchema.parse(content);
  const choice = fewer === undefined ? null : linkOf(fewer);
  const written: WrittenMessage = {
    ...said,
    parts: parts.map((part) => ("to" in part ? { link: part.link, address: linkOf(part.to) } : part)),
    site: new URL(environment().NEXTAUTH_URL).host,
    fewer: choice,
  };
  return {
    ...{ messageId, to: { name: said.name, address }, from: environment().MAIL_FROM, subject: said.subject },
    ...(said.from === null ? {} : { replyTo: { name: said.from.name, address: said.from.email } }),
    ...{ text: messageText(written), html: messageHtml(written) },
    // RFC 3834: whoever is away does not answer it by machine.
    headers: { "Auto-Submitted": "auto-generated", ...(choice === null ? {} : unsubscribing(choice)) },
  };
}

/** RFC 8058: a mail reader offers to unsubscribe, and does so by POST without a sign-in. */
function unsubscribing(choice: string) {
  return { "List-Unsubscribe": `<${choice}/stop>`, "List-Unsubscribe-Post": "List-Unsubscribe=One-Click" };
}

function linkOf(to: LinkTarget): string {
  if ("path" in to) return wholeAddress(to.path);
  const { before, key, id, version, after = "" } = to;
  return wholeAddress(`${before}${linkTo(key, { id, version })}${after}`);
}

async function noteServer(delivery: Delivery): Promise<void> {
  const isAway = delivery.status === "later" && delivery.isServerAway;
  if (isAway) {
    server.failures += 1;
    server.restUntilMs = Date.now() + afterServerFailures(server.failures);
    log.warn({ reply: delivery.reply }, "the mail server takes no message");
  } else {
    server.failures = 0;
    server.restUntilMs = 0;
  }
  try {
    await noteMailServer(isAway ? delivery.reply : null);
  } catch (error) {
    if (!isDatabaseUnavailable(error)) throw error;
  }
}

async function record({ id, address, attempts }: TakenMessage, delivery: Delivery): Promise<void> {
  const { status, reply } = delivery;
  const now = new Date();
  await inTransaction(async (transaction) => {
    const isGivenUp = status === "refused" || (status === "later" && attempts >= MOST_ATTEMPTS);
    const { count } = await transaction.message.updateMany({
      where: { id, dueAt: { not: null } },
      data: {
        reply,
        sentAt: status === "sent" ? now : null,
        failedAt: isGivenUp ? now : null,
        dueAt: status === "later" && !isGivenUp ? new Date(now.getTime() + afterAttempts(attempts)) : null,
      },
    });
    // Of a person who was deleted meanwhile nothing is stored.
    if (count === 0 || status !== "refused" || !delivery.isAddress) return;
    await transaction.refusedAddress.createMany({ data: { address, reply }, skipDuplicates: true });
  });
}
