import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { holdCall } from "@/features/calls/mutations";
import { writeMessages } from "@/features/mail/mutations";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { applicationTarget } from "../applications/access";
import { signingDesigner } from "../invitations/mailed-tester-data";
import { noSpotContent } from "./no-spot-copy";
import { untoldApplicants } from "./no-spot-data";

/**
 * Tells everyone without a spot by mail, once: those who were declined, and those for whom no spot was left.
 *
 * @returns how many were told.
 * @throws {AppError} "not-found" if the viewer may not edit the call.
 */
export async function tellWithoutSpot(access: CallAccess): Promise<number> {
  const { callId } = access;
  return await inTransaction(async (transaction) => {
    // Two who tell at once tell once.
    if (!(await holdCall(transaction, callId, callEditScope(access)))) throw new AppError("not-found");
    const applicants = await transaction.application.findMany({
      where: untoldApplicants(access, new Date()),
      orderBy: { position: "asc" },
      select: {
        ...{ id: true, decision: true, contact: { select: { name: true, email: true } } },
        call: { select: { title: true, status: true, pattern: { select: { memberships: signingDesigner } } } },
      },
    });
    const messages = applicants.map(({ id, decision, contact, call }) => ({
      kind: "no-place" as const,
      address: contact?.email ?? null,
      content: noSpotContent({
        ...{ name: contact?.name ?? "", title: call.title, ownLink: applicationTarget(id) },
        designer: call.pattern.memberships[0]?.account ?? null,
        isFinal: decision === "no" || call.status === "closed",
      }),
      about: { callId, applicationId: id },
    }));
    await writeMessages(transaction, messages);
    return messages.length;
  });
}
