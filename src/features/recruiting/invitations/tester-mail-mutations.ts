import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent, MessageKind, MessageWords } from "@/features/mail/schema";
import { storedPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { mailedTester, mailedTesterSelect, type MailedTester } from "./mailed-tester-data";

interface ToTesters {
  readonly kind: MessageKind;
  /** Where clause of the testers, by the proof of whoever acts. */
  readonly testers: Prisma.TesterWhereInput;
  /** What it says to each, signed by the designer; null: nothing. */
  readonly content: (tester: MailedTester) => MessageWords | null;
}

/** Writes mail to testers who have an address, from their designer, in the transaction that causes it. */
export async function writeToTesters(connection: Connection, { kind, testers, content }: ToTesters): Promise<void> {
  if (!isMailOn()) return;
  const where = { AND: [testers, { contact: { email: { not: null } } }] };
  const rows = await connection.tester.findMany({ where, orderBy: { position: "asc" }, select: mailedTesterSelect });
  const ids = new Set(rows.flatMap(({ revisionId }) => revisionId ?? []));
  const revisions = await connection.revision.findMany({
    where: { id: { in: [...ids] } },
    select: { id: true, document: true },
  });
  const patterns = new Map(revisions.map((revision) => [revision.id, storedPattern(revision)]));
  const messages = rows.flatMap((row) => {
    const { id: testerId, callId, applicationId, call, contact } = row;
    const said = content(mailedTester(row, patterns.get(row.revisionId ?? "")));
    if (said === null) return [];
    const whole: MessageContent = {
      ...said,
      name: contact?.name ?? "",
      from: call.pattern.memberships[0]?.account ?? null,
      because: `because you ${row.acceptedAt === null ? "were offered a spot in" : "are a tester of"} “${call.title}”`,
    };
    return [{ kind, address: contact?.email ?? null, content: whole, about: { callId, testerId, applicationId } }];
  });
  await writeMessages(connection, messages);
}
