import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { writeMessages } from "@/features/mail/mutations";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { signingDesigner } from "../../invitations/mailed-tester-data";
import { applicationTarget } from "../access";

/**
 * Sends an applicant the link to their own page again, to the address that they gave.
 *
 * @throws {AppError} "not-found" if the application is gone, or the viewer may not edit its call.
 */
export async function sendOwnLink(access: CallAccess, applicationId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const row = await transaction.application.findFirst({
      where: { id: applicationId, call: callEditScope(access), contact: { isNot: null } },
      select: {
        contact: { select: { name: true, email: true } },
        call: { select: { title: true, pattern: { select: { memberships: signingDesigner } } } },
      },
    });
    if (row?.contact == null) throw new AppError("not-found");
    const { contact, call } = row;
    const content = {
      ...{ subject: `Your application to test “${call.title}”`, name: contact.name },
      parts: [
        { text: `Here is the link to your application to test “${call.title}” again.` },
        { link: "Open your application", to: applicationTarget(applicationId) },
        { text: "Whoever has this link can open that page, so keep it to yourself." },
      ],
      from: call.pattern.memberships[0]?.account ?? null,
      because: `because you applied to test “${call.title}”`,
    };
    const about = { callId: access.callId, applicationId };
    await writeMessages(transaction, [{ kind: "link-sent", address: contact.email, content, about }]);
  });
}
