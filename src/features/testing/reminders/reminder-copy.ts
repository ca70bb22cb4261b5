import type { MessageWords } from "@/features/mail/schema";
import { dateFacts, zoneFact, type MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { calendarTarget } from "@/features/recruiting/invitations/reminders-access";
import { untilWords } from "@/ui/moment-copy";
import type { DatedKind, Reminder } from "./next-reminder";

/** A reminder in words. Nobody is blamed, and nobody is released by it. */
export function reminderContent(
  { kind, holds = [] }: Pick<Reminder, "kind" | "holds">,
  tester: MailedTester,
): MessageWords {
  const { dates, timeZone, expiresAt, ownLink } = tester;
  if (kind === "answer-offer")
    return {
      subject: `Your spot to test “${tester.pattern}”: please answer`,
      parts: [
        { text: `I have a spot in size ${tester.size} of “${tester.pattern}” for you. Would you like it?` },
        { facts: [...untilFact(expiresAt, timeZone), ...zoneFact(timeZone)] },
        { link: "Accept or decline", to: ownLink },
        { text: "A no is fine too: then somebody else can have it." },
      ],
    };
  const { subject, text } = wordsOf(kind, tester.pattern);
  return {
    subject,
    parts: [
      { text },
      ...holds.map((held) => ({ text: WEEK_LINES[held] })),
      { facts: [...dateFacts(dates, timeZone), ...zoneFact(timeZone)] },
      { link: "Open your test", to: ownLink },
      { text: "If you need more time or have to stop, say so on your page or answer this e-mail. That is all right." },
      // Once is enough, and with what comes weekly.
      ...(kind === "start-today" || kind === "this-week"
        ? [{ link: "Add the dates to your calendar", to: calendarTarget(tester.testerId) }]
        : []),
    ],
  };
}

function untilFact(expiresAt: Date | null, timeZone: string): [string, string][] {
  return expiresAt === null ? [] : [["Please answer by", untilWords(expiresAt, timeZone)]];
}

function wordsOf(kind: Exclude<Reminder["kind"], "answer-offer">, pattern: string): { subject: string; text: string } {
  switch (kind) {
    case "this-week":
      return {
        subject: `This week in the test of “${pattern}”`,
        text: "Here is what comes up this week.",
      };
    case "start-today":
      return {
        subject: `The test of “${pattern}” starts today`,
        text: "Today the test starts. Your page has the pattern in your size; the first step is your swatch.",
      };
    case "swatch-tomorrow":
      return {
        subject: `Your swatch for “${pattern}” is due tomorrow`,
        text: "Your swatch is due tomorrow. With its numbers we both see what your gauge means for your size before you make the garment.",
      };
    case "swatch-overdue":
      return {
        subject: `Your swatch for “${pattern}”`,
        text: "I have no numbers of your swatch yet. If it is made, it takes a few minutes to enter them.",
      };
    case "half-way":
      return {
        subject: `Half way through the test of “${pattern}”`,
        text: "The test is half way through. How is it going? One tap on your page tells me.",
      };
    case "report-tomorrow":
      return {
        subject: `Your report on “${pattern}” is due tomorrow`,
        text: "Your report is due tomorrow. What you have entered so far is saved on your page, and you can send what you have.",
      };
    case "report-late":
      return {
        subject: `Your report on “${pattern}”`,
        text: "I have no report from you yet. I would still like to have it: how are you getting on? If I hear nothing I may offer your spot to somebody else, but nothing happens by itself.",
      };
    case "correction-open":
      return {
        subject: `A correction to “${pattern}” waits for your answer`,
        text: "I published a correction and don’t know yet what it means for your garment. One tap on your page tells me whether you will follow it, have changed it, or keep what you made. Each of these is fine.",
      };
  }
}

/** What is due in a week, or was, in the message of that week. */
const WEEK_LINES: Readonly<Record<DatedKind, string>> = {
  "answer-offer": "Your spot waits for your answer.",
  "start-today": "The test starts this week. Your page has the pattern in your size; the first step is your swatch.",
  "swatch-tomorrow": "Your swatch is due this week.",
  "swatch-overdue": "I have no numbers of your swatch yet. If it is made, it takes a few minutes to enter them.",
  "half-way": "This week the test is half way through. How is it going? One tap on your page tells me.",
  "report-tomorrow":
    "Your report is due this week. What you have entered so far is saved, and you can send what you have.",
  "report-late": "I have no report from you yet. I would still like to have it: how are you getting on?",
  "correction-open": "A correction to the pattern waits for your answer: one tap on your page.",
};
