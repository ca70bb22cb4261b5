import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

/** Their swatch or their report has come in. */
export function receivedContent(
  { pattern, ownLink }: MailedTester,
  { isSwatch }: { readonly isSwatch: boolean },
): MessageWords {
  const what = isSwatch ? "swatch" : "report";
  return {
    subject: `Your ${what} for “${pattern}” is in`,
    parts: [
      { text: `Thank you: your ${what} for “${pattern}” is in.` },
      {
        text: isSwatch
          ? "Your page shows what your swatch means for your size. The rest of the report can come whenever you are ready."
          : "If you notice a mistake, change it on your page and send it again. I write to you if I have a question.",
      },
      { link: "Open your test", to: ownLink },
    ],
  };
}
