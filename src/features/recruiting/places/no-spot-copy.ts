import type { MessageWords } from "@/features/mail/schema";
import type { MailedApplicant } from "../applications/mailed-applicant-data";

/** They applied, and have no spot. */
export function noSpotContent({ title, ownLink, isFinal }: MailedApplicant): MessageWords {
  return {
    subject: isFinal ? `No spot this time in “${title}”` : `All spots in “${title}” are given`,
    parts: [
      {
        text: isFinal
          ? `Thank you for offering to test “${title}”. I could not give you a spot this time.`
          : `Thank you for offering to test “${title}”. More people applied than there are spots, and all of them are given for now. If one opens up that fits you, I will write to you.`,
      },
      { text: "You need not do anything. On your page you can delete all that you sent." },
      { link: "Open your application", to: ownLink },
    ],
  };
}
