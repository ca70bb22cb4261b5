import "server-only";
import { storeDailySummary } from "@/features/accounts/mutations";
import { summaryAccess } from "@/features/accounts/summary-access";
import { remindersAccess } from "@/features/recruiting/invitations/reminders-access";
import { AppError } from "@/server/errors";
import { storeLinkedChoice } from "./choice-mutations";

/**
 * Stops reminders or daily summaries by a link of theirs, as a mail reader asks to.
 *
 * @returns false where the link is none of ours.
 * @see RFC 8058
 */
export async function stopByLink(link: string): Promise<boolean> {
  return (
    (await isDone(async () => await storeLinkedChoice(await remindersAccess(link), "none"))) ||
    (await isDone(async () => await storeDailySummary(await summaryAccess(link), false)))
  );
}

async function isDone(write: () => Promise<void>): Promise<boolean> {
  try {
    await write();
    return true;
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found") return false;
    throw error;
  }
}
