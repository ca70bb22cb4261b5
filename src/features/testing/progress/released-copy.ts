import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

/** Nothing was heard of them, and the designer has opened their spot. */
export function releasedContent({ pattern, size, ownLink }: MailedTester): MessageWords {
  return {
    subject: `Your spot in the test of “${pattern}” is open for somebody else`,
    parts: [
      {
        text: `I have not heard from you about “${pattern}” in size ${size}, so I have opened your spot for somebody else. What you sent is safe.`,
      },
      { text: "If you are still making it, say so on your page: as long as the spot is free, it is yours again." },
      { link: "Open your test", to: ownLink },
    ],
  };
}

/** The designer has ended their test. */
export function endedContent({ pattern, size, ownLink }: MailedTester): MessageWords {
  return {
    subject: `Your test of “${pattern}” has ended`,
    parts: [
      {
        text: `I have ended your test of “${pattern}” in size ${size}. What you sent is safe; nothing more needs to be sent.`,
      },
      { link: "Open your test", to: ownLink },
      { text: "To ask me about it, just answer this e-mail." },
    ],
  };
}
