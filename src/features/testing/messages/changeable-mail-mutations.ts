import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import type { DesignerMailKind, MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { writeToTesters } from "@/features/recruiting/invitations/tester-mail-mutations";
import { inDesignersWords } from "@/features/recruiting/own-words/own-words-data";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import type { ChangeableKind } from "./changeable-kinds";

interface Mail {
  readonly isReminder?: boolean;
  /** See `writeToTesters`. */
  readonly key?: string;
  /** Where clause, by the proof of whoever acts. */
  readonly testers: Prisma.TesterWhereInput;
  /** In Sizewright's words. */
  readonly content: (tester: MailedTester) => MessageWords;
}

type Kind =
  | { readonly kind: DesignerMailKind & ChangeableKind; readonly changedAs?: undefined }
  /** Where designers change several kinds that have the same cause. */
  | { readonly kind: DesignerMailKind; readonly changedAs: ChangeableKind };

/** Writes mail to testers as their designers changed it, in the transaction that causes it. */
export async function writeChangeable(connection: Connection, { changedAs, ...mail }: Mail & Kind): Promise<void> {
  if (!isMailOn()) return;
  const { kind, testers } = mail;
  const content = await inDesignersWords(connection, { ...mail, kind: changedAs ?? kind });
  await writeToTesters(connection, { ...mail, testers, content });
}
