import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent, MessageKind, MessageWords } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { changedMessage } from "../own-words/changed-message-computed";
import { applicantValues, messageChange } from "../own-words/own-words-data";
import { mailedApplicant, mailedApplicantSelect, type MailedApplicant } from "./mailed-applicant-data";

interface ToApplicants {
  readonly kind: MessageKind;
  /** Where clause of the applications, by the proof of whoever acts. */
  readonly applications: Prisma.ApplicationWhereInput;
  /** What it says to each, signed by the designer, and why they get it where that is not that they applied. */
  readonly content: (applicant: MailedApplicant) => MessageWords & Partial<Pick<MessageContent, "because">>;
}

/** Writes mail to applicants of one call, from the designer and in their words where they wrote some, in the transaction that causes it. @returns to how many. */
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
  const change = await messageChange(connection, { kind, call: { applications: { some: applications } } });
  const messages = rows.map((row) => {
    const { id: applicationId, callId, contact, call } = row;
    const said = content(mailedApplicant(row));
    const values = applicantValues(contact?.name ?? "");
    const whole = {
      because: `because you applied to test “${call.title}”`,
      ...said,
      ...changedMessage(said, { change, values }),
      name: contact?.name ?? "",
      from: call.pattern.memberships[0]?.account ?? null,
    };
    return { kind, address: contact?.email ?? null, content: whole, about: { callId, applicationId } };
  });
  await writeMessages(connection, messages);
  return messages.length;
}
