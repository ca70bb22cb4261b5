import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import type { MessageKind, MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { writeToTesters } from "@/features/recruiting/invitations/tester-mail-mutations";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { fieldValues } from "../writing/recipients-data";
import { changedMessage } from "@/features/recruiting/own-words/changed-message-computed";
import type { ChangeableKind } from "./changeable-kinds";
import { changeFor } from "./message-change-data";

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
  const change = await changeFor(connection, { kind: changedAs, testers: mail.testers });
  await writeToTesters(connection, {
    ...mail,
    content: (tester) => changedMessage(content(tester), { change, values: fieldValues(tester) }),
  });
}
