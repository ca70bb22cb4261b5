import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

/** The pattern is released: what they agreed to keep to themselves until then they may show. */
export function patternReleasedContent({ pattern, ownLink }: MailedTester): MessageWords {
  return {
    subject: `“${pattern}” is released`,
    parts: [
      { text: `“${pattern}” is released today, and your report helped. Thank you.` },
      {
        text: "What you agreed to keep to yourself until the release, you may now show. Your page says which photos that is. The pattern’s text, charts and numbers stay private.",
      },
      { link: "Open your test", to: ownLink },
    ],
  };
}
