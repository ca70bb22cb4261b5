import "server-only";
import { cache } from "react";
import { hasDailySummary } from "@/features/accounts/data";
import { summaryAccess } from "@/features/accounts/summary-access";
import { remindersAccess } from "@/features/recruiting/invitations/reminders-access";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { readLinkedChoice, type ReminderChoiceRead } from "./choice-data";

export type LinkedChoice =
  ({ readonly of: "reminders" } & ReminderChoiceRead) | { readonly of: "summary"; readonly isOn: boolean };

/** What has been chosen, for whoever has the link of a reminder or a summary. Looking at it changes nothing. */
export const loadLinkedChoice = cache((link: string): Promise<LinkedChoice> => foundOr404(linkedChoice(link)));

async function linkedChoice(link: string): Promise<LinkedChoice> {
  try {
    return { of: "reminders", ...(await readLinkedChoice(await remindersAccess(link))) };
  } catch (error) {
    if (!(error instanceof AppError)) throw error;
    return { of: "summary", isOn: await hasDailySummary(await summaryAccess(link)) };
  }
}
