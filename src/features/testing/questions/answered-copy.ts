import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

interface Answered {
  /** Their own questions. */
  readonly asks: readonly string[];
  readonly answer: string;
  /** There was an answer before. */
  readonly isChanged: boolean;
}

/** The designer has answered what they asked. */
export function answeredContent(
  { pattern, ownLink }: MailedTester,
  { asks, answer, isChanged }: Answered,
): MessageWords {
  const many = asks.length === 1 ? "your question" : "your questions";
  return {
    subject: isChanged ? `A changed answer about “${pattern}”` : `An answer about “${pattern}”`,
    parts: [
      {
        text: isChanged
          ? `I have changed my answer to ${many} about “${pattern}”.`
          : `Thank you for ${many} about “${pattern}”. Here is my answer.`,
      },
      { text: "You asked:" },
      ...asks.map((quote) => ({ quote })),
      { text: isChanged ? "My new answer:" : "My answer:" },
      { quote: answer },
      { text: "You find it in the pattern on your page too, where you asked." },
      { link: "Open your test", to: ownLink },
    ],
  };
}
