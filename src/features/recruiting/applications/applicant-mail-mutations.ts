import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent, MessageKind, MessageWords } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { mailedApplicant, mailedApplicantSelect, type MailedApplicant } from "./mailed-applicant-data";

interface ToApplicants {
  readonly kind: MessageKind;
  /** Where clause of the applications, by the proof of whoever acts. */
  readonly applications: Prisma.ApplicationWhereInput;
  /** What it says to each, signed by the designer, and why they get it where that is not that they applied. */
  readonly content: (applicant: MailedApplicant) => MessageWords & Partial<Pick<MessageContent, "because">>;
}

/** Writes mail to applicants, from the designer, in the transaction that causes it. @returns to how many. */
export async function writeToApplicants(
  connection: Connection,
  { kind, applications, content }: ToApplicants,
): Promise<number> {
  if (!isMailOn()) return 0;
  const rows = await connection.application.findMany({
    where: applications,
    orderBy: { position: "asc" },
    select: mailedApplicantSelect,
  });
  const messages = rows.map((row) => {
    const { id: applicationId, callId, contact, call } = row;
    const whole = {
      because: `because you applied to test “${call.title}”`,
      ...content(mailedApplicant(row)),
      name: contact?.name ?? "",
      from: call.pattern.memberships[0]?.account ?? null,
    };
    return { kind, address: contact?.email ?? null, content: whole, about: { callId, applicationId } };
  });
  await writeMessages(connection, messages);
  return messages.length;
}
