import "server-only";
import { remindersScope, type RemindersAccess } from "@/features/recruiting/invitations/reminders-access";
import type { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { testerScope, type TesterAccess } from "../home/access";
import type { MailChoices } from "./choice-data";
import type { ReminderChoice } from "./reminder-choice";

interface OwnReminders {
  readonly choice: ReminderChoice;
  readonly timeZone: string;
}

/** Stores how often a tester gets reminders, and the time zone of this test. @throws {AppError} "not-found". */
export async function storeOwnReminders(access: TesterAccess, { choice, timeZone }: OwnReminders): Promise<void> {
  await inTransaction(async (transaction) => {
    await storeChoice(transaction, testerScope(access), choice);
    await transaction.tester.updateMany({ where: testerScope(access), data: { timeZone } });
  });
}

/** Stores how often a tester gets reminders, for whoever has the link of one. @throws {AppError} "not-found". */
export async function storeLinkedChoice(access: RemindersAccess, choice: ReminderChoice): Promise<void> {
  await inTransaction((transaction) => storeChoice(transaction, remindersScope(access), choice));
}

/** People with an account choose for all their tests. */
async function storeChoice(connection: Connection, tester: Prisma.TesterWhereInput, reminders: ReminderChoice) {
  const row = await connection.tester.findFirst({ where: tester, select: { accountId: true } });
  if (row === null) throw new AppError("not-found");
  if (row.accountId === null) await connection.tester.updateMany({ where: tester, data: { reminders } });
  else await storeOfAccount(connection, row.accountId, { reminders });
}

/** Stores what an account has chosen about mail. */
export async function storeMailChoices({ accountId }: Viewer, choices: MailChoices): Promise<void> {
  await inTransaction((transaction) => storeOfAccount(transaction, accountId, choices));
}

async function storeOfAccount(
  connection: Connection,
  accountId: string,
  data: Partial<MailChoices> & Pick<MailChoices, "reminders">,
): Promise<void> {
  await connection.account.update({ where: { id: accountId }, data });
  await connection.tester.updateMany({ where: { accountId }, data: { reminders: data.reminders } });
}
