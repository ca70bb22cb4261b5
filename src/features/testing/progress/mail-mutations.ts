import "server-only";
import type { CallAccess } from "@/features/calls/access";
import { sendAgain } from "@/features/mail/mutations";
import { inTransaction } from "@/server/transaction";
import { mailToTester } from "./mail-data";

/** Sends mail to a tester that was given up once more. */
export async function sendMailToTesterAgain(access: CallAccess, testerId: string): Promise<void> {
  await inTransaction((transaction) => sendAgain(transaction, mailToTester(access, testerId)));
}
