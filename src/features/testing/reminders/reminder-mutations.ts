import "server-only";
import { z } from "zod";
import { invitationState } from "@/features/calls/tester-status";
import { isMailOn } from "@/features/mail/mail-status";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { inBatches } from "@/server/in-batches";
import { inTransaction, type Connection } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { callTime, listingDays, testerTime } from "../home/call-time";
import { DATED_KINDS, nextReminder, REMINDER_KINDS, type RemindedTester, type Reminder } from "./next-reminder";
import { lessOften } from "./reminder-choice";
import { reminderContent } from "./reminder-copy";
import { concernsSize } from "../corrections/correction-data";

/** A tester whose next reminder is due, null where there is none. */
export async function nextReminded(now = new Date()): Promise<string | null> {
  for await (const id of dueTesters(now)) return id;
  return null;
}

/** The worker's job: writes all reminders that are due, each once, however many workers there are. */
export async function writeReminders(now = new Date()): Promise<void> {
  for await (const id of dueTesters(now)) await inTransaction((transaction) => remind(transaction, id, now));
}

async function* dueTesters(now: Date): AsyncGenerator<string> {
  if (!isMailOn()) return;
  const testers = inBatches(({ where, take }) =>
    database().tester.findMany({
      where: { ...mayBeReminded(now), ...where },
      orderBy: { id: "asc" },
      take,
      select: REMINDED,
    }),
  );
  for await (const row of testers) if (dueReminder(row, now) !== null) yield row.id;
}

/** Reads again what holds now, while nobody else changes it. */
async function remind(transaction: Connection, id: string, now: Date): Promise<void> {
  await transaction.$queryRaw`SELECT id FROM tester WHERE id = ${id}::uuid FOR UPDATE`;
  const row = await transaction.tester.findFirst({ where: { ...mayBeReminded(now), id }, select: REMINDED });
  const due = row === null ? null : dueReminder(row, now);
  if (due === null) return;
  const { kind, about } = due;
  await transaction.reminder.create({ data: { testerId: id, kind, about, writtenAt: now } });
  const mail = { kind: "reminder" as const, isReminder: true, testers: { id } };
  const content = (tester: MailedTester) => reminderContent(due, tester);
  await writeChangeable(transaction, { ...mail, content, changedAs: kind });
}

function mayBeReminded(now: Date): Prisma.TesterWhereInput {
  return {
    ...{ call: { status: "open", pattern: { isDemo: false } }, contact: { email: { not: null } } },
    ...{ invitedAt: { not: null }, stoppedAt: null, declinedAt: null, withdrawnAt: null },
    OR: [{ acceptedAt: { not: null } }, { invitationExpiresAt: { gt: now } }],
  };
}

function dueReminder(row: Row, now: Date): Reminder | null {
  const next = nextReminder(remindedTester(row, now), now);
  return next !== null && next.at <= now ? next : null;
}

const measurementsSchema = z.array(z.string());
const kindSchema = z.enum(REMINDER_KINDS);

function remindedTester(row: Row, now: Date): RemindedTester {
  const { acceptedAt, invitedAt, reportedAt, reportDraft, answeredMeasurements } = row;
  const { dates, timeZone } = testerTime(row, callTime(row.call.listing));
  const hasReported = measurementsSchema.parse(answeredMeasurements ?? []).length > 0;
  const state = invitationState(row, now);
  return {
    state: hasReported || (state !== "invited" && state !== "accepted") ? "over" : state,
    since: acceptedAt ?? invitedAt ?? now,
    hasSwatch: reportedAt !== null || reportDraft?.hasSwatch === true || reportDraft?.hasMore === true,
    answerBy: row.invitationExpiresAt,
    dates:
      dates === null ? null : { startOn: dates.startOn.at, swatchBy: dates.swatchBy.at, reportBy: dates.reportBy.at },
    corrections: openCorrections(row),
    timeZone,
    choice: lessOften(row.reminders, row.account?.reminders),
    kindsOff: DATED_KINDS.filter((kind) => row.call.messageKinds.some((off) => off.kind === kind)),
    sent: row.sentReminders.map(({ kind, about, writtenAt: at }) => ({ kind: kindSchema.parse(kind), about, at })),
  };
}

/** When those of their size were published that they have not answered. */
function openCorrections({ size, call, correctionAnswers }: Row): Date[] {
  const answered = new Set(correctionAnswers.map(({ correctionId }) => correctionId));
  return call.corrections
    .filter((correction) => !answered.has(correction.id) && concernsSize(correction, size))
    .map(({ createdAt }) => createdAt);
}

const REMINDED = {
  ...{
    id: true,
    size: true,
    invitedAt: true,
    invitationExpiresAt: true,
    acceptedAt: true,
    declinedAt: true,
    withdrawnAt: true,
  },
  ...{ stoppedAt: true, timeZone: true, dates: true, reportedAt: true, answeredMeasurements: true },
  reportDraft: { select: { hasSwatch: true, hasMore: true } },
  ...{ reminders: true, account: { select: { reminders: true } } },
  sentReminders: { select: { kind: true, about: true, writtenAt: true } },
  correctionAnswers: { select: { correctionId: true } },
  call: {
    select: {
      listing: listingDays,
      corrections: { select: { id: true, sizes: true, createdAt: true } },
      messageKinds: { where: { isOff: true }, select: { kind: true } },
    },
  },
} satisfies Prisma.TesterSelect;

type Row = Prisma.TesterGetPayload<{ select: typeof REMINDED }>;
