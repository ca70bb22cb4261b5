import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { sendAgain } from "@/features/mail/mutations";
import { inTransaction } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { linkContent } from "./link-copy";
import { mailToTester } from "./mail-data";

/** Sends a tester their personal link again, to the address that they gave, while it opens an offer or their test. */
export async function sendLinkAgain(access: CallAccess, testerId: string): Promise<void> {
  const now = new Date();
  const testers = {
    ...{ id: testerId, call: callEditScope(access), invitedAt: { not: null }, declinedAt: null, withdrawnAt: null },
    OR: [{ acceptedAt: { not: null } }, { invitationExpiresAt: { gt: now } }],
  };
  await inTransaction((transaction) =>
    writeChangeable(transaction, { kind: "link-sent", changedAs: "own-link", testers, content: linkContent }),
  );
}

/** Sends mail to a tester that was given up once more. */
export async function sendMailToTesterAgain(access: CallAccess, testerId: string): Promise<void> {
  await inTransaction((transaction) => sendAgain(transaction, mailToTester(access, testerId)));
}
