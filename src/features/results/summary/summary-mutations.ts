import "server-only";
import { summaryTarget } from "@/features/accounts/summary-access";
import { isMailOn } from "@/features/mail/mail-status";
import { writeMessages } from "@/features/mail/mutations";
import { NO_ZONE } from "@/features/recruiting/listing/data";
import { listingSchema } from "@/features/recruiting/listing/schema";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { inBatches } from "@/server/in-batches";
import { inTransaction } from "@/server/transaction";
import { waitingCalls } from "../call-steps-data";
import { summaryContent } from "./summary-copy";
import { summaryDue } from "./summary-due";

/** An account whose daily summary is due, null where there is none. */
export async function nextSummary(now = new Date()): Promise<string | null> {
  for await (const { row } of dueAccounts(now)) return row.id;
  return null;
}

/** The worker's job: writes all daily summaries that are due, each once, and none where nothing needs its designer. */
export async function writeSummaries(now = new Date()): Promise<void> {
  for await (const { row, morning } of dueAccounts(now)) await writeSummary(row, { morning, now });
}

async function* dueAccounts(now: Date): AsyncGenerator<{ readonly row: Row; readonly morning: Date }> {
  if (!isMailOn()) return;
  const accounts = inBatches(({ where, take }) =>
    database().account.findMany({
      where: { dailySummary: true, memberships: { some: runs }, ...where },
      orderBy: { id: "asc" },
      take,
      select: SUMMARISED,
    }),
  );
  for await (const row of accounts) {
    const morning = summaryDue({ timeZone: zoneOf(row), last: row.summaryAt ?? row.createdAt }, now);
    if (morning !== null) yield { row, morning };
  }
}

async function writeSummary(
  { id, name, email, unit }: Row,
  { morning, now }: { readonly morning: Date; readonly now: Date },
): Promise<void> {
  const waiting = await waitingCalls({ accountId: id, name, email, unit }, now);
  await inTransaction(async (transaction) => {
    // Another worker may have written it, and they may have switched it off.
    const { count } = await transaction.account.updateMany({
      where: { id, dailySummary: true, OR: [{ summaryAt: null }, { summaryAt: { lt: morning } }] },
      data: { summaryAt: morning },
    });
    if (count === 0 || waiting.length === 0) return;
    const content = {
      ...{ ...summaryContent(waiting), name, from: null, fewer: summaryTarget(id) },
      because: "because these are tests of patterns that you may edit",
    };
    await writeMessages(transaction, [{ kind: "daily-summary", address: email, content, about: { accountId: id } }]);
  });
}

/** Their own zone, else that of their newest open test. */
function zoneOf({ timeZone, memberships }: Row): string {
  if (timeZone !== null) return timeZone;
  const calls = memberships.flatMap(({ pattern }) => pattern.calls);
  const [newest] = calls.toSorted((a, b) => b.createdAt.getTime() - a.createdAt.getTime());
  const listing = newest?.listing;
  return listing?.publishedAt == null ? NO_ZONE : listingSchema.parse(listing.document).timeZone;
}

/** Where somebody runs a test. */
const runs = {
  role: { not: "viewer" },
  pattern: { isDemo: false, calls: { some: { status: "open" } } },
} satisfies Prisma.MembershipWhereInput;

const SUMMARISED = {
  ...{ id: true, name: true, email: true, unit: true, timeZone: true, summaryAt: true, createdAt: true },
  memberships: {
    where: runs,
    select: {
      pattern: {
        select: {
          calls: {
            where: { status: "open" },
            orderBy: { createdAt: "desc" },
            take: 1,
            select: { createdAt: true, listing: { select: { document: true, publishedAt: true } } },
          },
        },
      },
    },
  },
} satisfies Prisma.AccountSelect;

type Row = Prisma.AccountGetPayload<{ select: typeof SUMMARISED }>;
