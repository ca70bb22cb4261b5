import "server-only";
import { holdCall } from "@/features/calls/mutations";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent } from "@/features/mail/schema";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { inTransaction, type Connection } from "@/server/transaction";
import { dayWords } from "@/ui/moment-copy";
import { unsafeTestersToForget } from "../forget/access";
import { forgetTesterIn } from "../forget/forget-in-mutations";
import { retentions, TOLD_DAYS, type Retention } from "./retention-data";

const TOLD_MS = TOLD_DAYS * 24 * 60 * 60_000;

/** A closed call whose designer is to be told what will be deleted, or of which it is to be deleted; null for none. */
export async function nextRetention(now = new Date()): Promise<string | null> {
  const rows = await retentions(database(), Prisma.sql`true`);
  return rows.find((retention) => isDue(retention, now))?.callId ?? null;
}

function isDue({ toldAt, deleteAt }: Retention, now: Date): boolean {
  return toldAt === null ? deleteAt.getTime() - TOLD_MS <= now.getTime() : deleteAt <= now;
}

/**
 * The worker's job: tells the designer 30 days before, and then deletes what is about people in a closed call, as its
 * privacy notice says. The numbers of reports stay under codes.
 */
export async function runRetention(callId: string, now = new Date()): Promise<void> {
  await inTransaction(async (transaction) => {
    if (!(await holdCall(transaction, callId, { status: "closed" }))) return;
    const [retention] = await retentions(transaction, Prisma.sql`call.id = ${callId}::uuid`);
    if (retention === undefined || !isDue(retention, now)) return;
    if (retention.toldAt === null) await tell(transaction, retention, now);
    else await deletePeople(transaction, callId, now);
  });
}

async function tell(transaction: Connection, retention: Retention, now: Date): Promise<void> {
  const { callId, title, timeZone, deleteAt } = retention;
  await transaction.call.update({ where: { id: callId }, data: { deletionToldAt: now }, select: { id: true } });
  const owner = await transaction.membership.findFirst({
    where: { role: "owner", pattern: { calls: { some: { id: callId } } } },
    select: { account: { select: { id: true, name: true, email: true } } },
  });
  if (owner === null) return;
  const { id: accountId, name, email: address } = owner.account;
  const latest = new Date(Math.max(deleteAt.getTime(), now.getTime() + TOLD_MS));
  const content: MessageContent = {
    ...{ subject: `On ${dayWords(latest, timeZone)}, testers’ data of “${title}” is deleted`, name, from: null },
    parts: [
      {
        text: `You closed “${title}” some time ago. As its privacy notice says, names, addresses, measurements, photos, applications and words of its testers are deleted on ${dayWords(latest, timeZone)}. The numbers of reports and all results stay.`,
      },
      { text: "Until then, save what you still need, such as the names of those you want to thank." },
      { link: "Open the test", to: { path: `/calls/${callId}/thanks` } },
    ],
    because: `because “${title}” is your test`,
  };
  await writeMessages(transaction, [{ kind: "deletion-soon", address, content, about: { callId, accountId } }]);
}

async function deletePeople(transaction: Connection, callId: string, now: Date): Promise<void> {
  for (const whose of await unsafeTestersToForget(transaction, { callId })) await forgetTesterIn(transaction, whose);
  await transaction.application.deleteMany({ where: { callId } });
  await transaction.message.deleteMany({ where: { callId } });
  await transaction.call.update({ where: { id: callId }, data: { peopleDeletedAt: now }, select: { id: true } });
}
