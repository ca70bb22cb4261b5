import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import type { MessageKind, MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { writeToTesters } from "@/features/recruiting/invitations/tester-mail-mutations";
import { inDesignersWords } from "@/features/recruiting/own-words/own-words-data";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import type { ChangeableKind } from "./changeable-kinds";

interface ChangeableMail {
  readonly kind: MessageKind;
  /** What designers change it as. */
  readonly changedAs: ChangeableKind;
  readonly isReminder?: boolean;
  /** Of one call: where clause, by the proof of whoever acts. */
  readonly testers: Prisma.TesterWhereInput;
  /** In Sizewright's words. */
  readonly content: (tester: MailedTester) => MessageWords;
}

/** Writes mail to testers as their designers changed it, in the transaction that causes it. */
export async function writeChangeable(
  connection: Connection,
  { changedAs, content, ...mail }: ChangeableMail,
): Promise<void> {
  if (!isMailOn()) return;
  const changed = await inDesignersWords(connection, { kind: changedAs, testers: mail.testers, content });
  await writeToTesters(connection, { ...mail, content: changed });
}
