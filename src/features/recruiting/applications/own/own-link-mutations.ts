import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { writeToApplicants } from "../applicant-mail-mutations";
import { ownLinkContent } from "./own-link-copy";

/**
 * Sends an applicant the link to their own page again, to the address that they gave.
 *
 * @throws {AppError} "not-found" if the application is gone, or the viewer may not edit its call.
 */
export async function sendOwnLink(access: CallAccess, applicationId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const applications = { id: applicationId, call: callEditScope(access), contact: { isNot: null } };
    if ((await transaction.application.count({ where: applications })) === 0) throw new AppError("not-found");
    await writeToApplicants(transaction, { kind: "application-link", applications, content: ownLinkContent });
  });
}
