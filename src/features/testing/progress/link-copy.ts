import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

/** Their personal link once more. */
export function linkContent({ pattern, size, ownLink }: MailedTester): MessageWords {
  return {
    subject: `Your link to the test of “${pattern}”`,
    parts: [
      { text: `Here is your link to the test of “${pattern}” in size ${size} again.` },
      { link: "Open your test", to: ownLink },
      { text: "This link is yours alone, so please don’t share it." },
    ],
  };
}
