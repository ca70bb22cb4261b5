import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import type { AskToMeasure } from "./asked-schema";

/** The question in the designer's words, which the tester reads at the measurement. */
export function measureWords(what: AskToMeasure, label: string): string {
  return what === "measure"
    ? `Your report leaves out ${label}. Could you measure it, please?`
    : `Could you measure ${label} once more, please, and add it as another reading? Much rests on this number, and a second reading would show how sure it is.`;
}

/** The designer asks about one number of their report. @param about what they typed. */
export function askedContent(
  { pattern, ownLink }: MailedTester,
  { about, asks }: { readonly about: string; readonly asks: string },
): MessageWords {
  return {
    subject: `A question about your report on “${pattern}”`,
    parts: [
      { text: `Thank you for your report on “${pattern}”. I have a question about one number in it.` },
      ...(about === "" ? [] : [{ facts: [["You entered", about] as [string, string]] }]),
      { quote: asks },
      { text: "On your page you can say that it is right, or enter another number and send your report again." },
      { link: "Open your test", to: ownLink },
    ],
  };
}
