import type { MessageWords } from "@/features/mail/schema";
import type { MailedApplicant } from "../mailed-applicant-data";

/** The way back to their application once more. */
export function ownLinkContent({ title, ownLink }: MailedApplicant): MessageWords {
  return {
    subject: `Your application to test “${title}”`,
    parts: [
      { text: `Here is the link to your application to test “${title}” again.` },
      { link: "Open your application", to: ownLink },
      { text: "Whoever has this link can open that page, so keep it to yourself." },
    ],
  };
}
