import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { holdCall } from "@/features/calls/mutations";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { writeToApplicants } from "../applications/applicant-mail-mutations";
import { noSpotContent } from "./no-spot-copy";
import { untoldApplicants } from "./no-spot-data";

/**
 * Tells everyone without a spot by mail, once: those who were declined, and those for whom no spot was left.
 *
 * @returns how many were told.
 * @throws {AppError} "not-found" if the viewer may not edit the call.
 */
export async function tellWithoutSpot(access: CallAccess): Promise<number> {
  return await inTransaction(async (transaction) => {
    // Two who tell at once tell once.
    if (!(await holdCall(transaction, access.callId, callEditScope(access)))) throw new AppError("not-found");
    const applications = untoldApplicants(access, new Date());
    return await writeToApplicants(transaction, { kind: "no-place", applications, content: noSpotContent });
  });
}
