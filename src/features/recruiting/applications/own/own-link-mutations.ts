import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import type { MessageWords } from "@/features/mail/schema";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { writeToApplicants } from "../applicant-mail-mutations";
import type { MailedApplicant } from "../mailed-applicant-data";

/**
 * Sends an applicant the link to their own page again, to the address that they gave.
 *
 * @throws {AppError} "not-found" if the application is gone, or the viewer may not edit its call.
 */
export async function sendOwnLink(access: CallAccess, applicationId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const applications = { id: applicationId, call: callEditScope(access), contact: { isNot: null } };
    if ((await transaction.application.count({ where: applications })) === 0) throw new AppError("not-found");
    await writeToApplicants(transaction, { kind: "link-sent", applications, content: ownLinkContent });
  });
}

function ownLinkContent({ title, ownLink }: MailedApplicant): MessageWords {
  return {
    subject: `Your application to test “${title}”`,
    parts: [
      { text: `Here is the link to your application to test “${title}” again.` },
      { link: "Open your application", to: ownLink },
      { text: "Whoever has this link can open that page, so keep it to yourself." },
    ],
  };
}
