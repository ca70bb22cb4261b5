import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

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
