import "server-only";
import { remindersScope, type RemindersAccess } from "@/features/recruiting/invitations/reminders-access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Viewer } from "@/server/viewer";
import { testerScope, type TesterAccess } from "../home/access";
import { lessOften, type ReminderChoice } from "./reminder-choice";

export interface ReminderChoiceRead {
  readonly choice: ReminderChoice;
  /** It holds for all tests that they take part in. */
  readonly hasAccount: boolean;
  /** The test's title. */
  readonly title: string;
}

/** How often a tester gets reminders, for themselves. */
export async function readOwnChoice(access: TesterAccess): Promise<ReminderChoiceRead> {
  return await readChoice(testerScope(access));
}

/** The same for whoever has the link of a reminder. */
export async function readLinkedChoice(access: RemindersAccess): Promise<ReminderChoiceRead> {
  return await readChoice(remindersScope(access));
}

async function readChoice(tester: Prisma.TesterWhereUniqueInput): Promise<ReminderChoiceRead> {
  const row = await database().tester.findUnique({
    where: tester,
    select: { reminders: true, account: { select: { reminders: true } }, call: { select: { title: true } } },
  });
  if (row === null) throw new AppError("not-found");
  return {
    choice: lessOften(row.reminders, row.account?.reminders),
    hasAccount: row.account !== null,
    title: row.call.title,
  };
}

/** What an account has chosen about mail. */
export interface MailChoices {
  readonly reminders: ReminderChoice;
  readonly dailySummary: boolean;
  /** Null where they have not said. */
  readonly timeZone: string | null;
}

export async function readMailChoices({ accountId }: Viewer): Promise<MailChoices> {
  return await database().account.findUniqueOrThrow({
    where: { id: accountId },
    select: { reminders: true, dailySummary: true, timeZone: true },
  });
}
