/** How often somebody gets reminders, from the most to the least. */
export const REMINDER_CHOICES = ["all", "weekly", "none"] as const;

export type ReminderChoice = (typeof REMINDER_CHOICES)[number];

/** Of a tester's choice and their account's, the one that brings less. */
export function lessOften(tester: ReminderChoice, account: ReminderChoice | undefined): ReminderChoice {
  return account !== undefined && REMINDER_CHOICES.indexOf(account) > REMINDER_CHOICES.indexOf(tester)
    ? account
    : tester;
}
