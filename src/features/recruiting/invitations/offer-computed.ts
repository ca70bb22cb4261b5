import type { MessageWords } from "@/features/mail/schema";
import { untilWords } from "@/ui/moment-copy";
import { dateFacts, pieceFact, zoneFact, type Facts, type MailedTester } from "./mailed-tester-data";

/** A place is offered, or can be answered longer. */
export function offerContent(tester: MailedTester): MessageWords {
  const { pattern, size, dates, timeZone, expiresAt, hasApplied, ownLink } = tester;
  const until: Facts = expiresAt === null ? [] : [["Please answer by", untilWords(expiresAt, timeZone)]];
  return {
    subject: `A spot to test “${pattern}” in size ${size}`,
    parts: [
      {
        text: hasApplied
          ? `Thank you for offering to test “${pattern}”. I would like you to make size ${size}.`
          : `Would you like to test “${pattern}” for me in size ${size}?`,
      },
      { facts: [...pieceFact(tester), ...until, ...dateFacts(dates, timeZone), ...zoneFact(timeZone)] },
      { link: "Accept or decline", to: ownLink },
      {
        text: "This link is yours alone, so please don’t share it. To ask me something first, just answer this e-mail.",
      },
    ],
  };
}

/** The offer was taken back before they answered. */
export function offerWithdrawnContent({ pattern, size }: MailedTester): MessageWords {
  return {
    subject: `The offer to test “${pattern}” is withdrawn`,
    parts: [
      { text: `I have had to take back the spot in size ${size} of “${pattern}” that I offered you. I am sorry.` },
      { text: "There is nothing for you to do. To ask me about it, just answer this e-mail." },
    ],
  };
}
