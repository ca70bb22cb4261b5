import { z } from "zod";

/** How often somebody gets reminders, from the most to the least. */
export const REMINDER_CHOICES = ["all", "weekly", "none"] as const;

export const reminderChoiceSchema = z.enum(REMINDER_CHOICES, { error: "Choose how often you get reminders." });

export type ReminderChoice = z.infer<typeof reminderChoiceSchema>;

/** Of a tester's choice and their account's, the one that brings less. */
export function lessOften(tester: ReminderChoice, account: ReminderChoice | undefined): ReminderChoice {
  return account !== undefined && REMINDER_CHOICES.indexOf(account) > REMINDER_CHOICES.indexOf(tester)
    ? account
    : tester;
}
