import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { dateFacts, zoneFact } from "@/features/recruiting/invitations/mailed-tester-data";

/** They have accepted: when it starts, and the way to their test. */
export function acceptedContent(tester: MailedTester): MessageWords {
  const { pattern, size, dates, timeZone, ownLink } = tester;
  return {
    subject: `You are testing “${pattern}” in size ${size}`,
    parts: [
      { text: `Thank you for testing “${pattern}” in size ${size}. Your spot is safe.` },
      ...(dates === null ? [] : [{ facts: [...dateFacts(dates, timeZone), ...zoneFact(timeZone)] }]),
      {
        text: "Your page has the pattern in your size. There you send your swatch and your report, ask about a passage, and say how it is going.",
      },
      { link: "Open your test", to: ownLink },
      {
        text: "If you have to stop, that is all right: say so on your page, so that somebody else can make your size.",
      },
    ],
  };
}
