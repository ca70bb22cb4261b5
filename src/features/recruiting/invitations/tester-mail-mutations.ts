import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent, MessageKind, MessageWords } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { remindersTarget } from "./reminders-access";
import { mailedTesters, type AddressedTester, type MailedTester } from "./mailed-tester-data";

interface Mail {
  readonly kind: MessageKind;
  /** What it says to each, signed by the designer; null: nothing. */
  readonly content: (tester: MailedTester) => MessageWords | null;
  /** Of the sending that causes it: the same again writes nothing more. */
  readonly key?: string;
  /** A reminder, of which everybody may get fewer or none. */
  readonly isReminder?: boolean;
}

/**
 * Writes mail to testers who have an address, from their designer, in the transaction that causes it.
 *
 * @param testers where clause, by the proof of whoever acts.
 */
export async function writeToTesters(
  connection: Connection,
  { testers, ...mail }: Mail & { readonly testers: Prisma.TesterWhereInput },
): Promise<void> {
  if (isMailOn()) await writeToMailedTesters(connection, await mailedTesters(connection, testers), mail);
}

/** The same to testers who are read already. */
export async function writeToMailedTesters(
  connection: Connection,
  testers: readonly AddressedTester[],
  { kind, content, key, isReminder = false }: Mail,
): Promise<void> {
  const messages = testers.flatMap(({ row, tester }) => {
    const { id: testerId, callId, applicationId, call, contact } = row;
    const said = content(tester);
    if (said === null) return [];
    const whole: MessageContent = {
      ...said,
      name: tester.name,
      from: call.pattern.memberships[0]?.account ?? null,
      because: `because you ${row.acceptedAt === null ? "were offered a spot in" : "are a tester of"} “${call.title}”`,
      ...(isReminder ? { fewer: remindersTarget(testerId) } : {}),
    };
    return [
      {
        kind,
        key: key && `${key}.${testerId}`,
        address: contact?.email ?? null,
        content: whole,
        about: { callId, testerId, applicationId },
      },
    ];
  });
  await writeMessages(connection, messages);
}
