import type { ReminderChoice } from "./reminder-choice";

export const CHOICE_LABELS: Readonly<Record<ReminderChoice, string>> = {
  all: "When something is due: at most one a week, and two in the last week before your report",
  weekly: "Once a week: on Monday, with what is due that week",
  none: "Never",
};

/** The same as part of a page that shows it. */
export const CHOICE_WORDS: Readonly<Record<ReminderChoice, string>> = {
  all: "You get reminders by e-mail when something is due.",
  weekly: "You get one reminder by e-mail a week, on Monday, with what is due.",
  none: "You get no reminders by e-mail.",
};

export const STILL_COMES =
  "Whatever you choose, you still get what you need for the test: offers, answers to your questions, corrections, and what the designer writes to you.";
