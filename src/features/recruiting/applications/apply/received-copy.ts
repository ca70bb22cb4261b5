import type { MessageContent, MessageWords } from "@/features/mail/schema";
import type { MailedApplicant } from "../mailed-applicant-data";

/** An application has come in, with the way back to it. */
export function receivedContent({ title, ownLink }: MailedApplicant): MessageWords & Pick<MessageContent, "because"> {
  return {
    subject: `Your application to test “${title}”`,
    parts: [
      { text: `Thank you for applying to test “${title}”. Your application is in.` },
      {
        text: "On your own page you see what happens next and when. There you can also withdraw your application, or delete all that you sent.",
      },
      { link: "Open your application", to: ownLink },
      {
        text: "Whoever has this link can open that page, so keep it to yourself. Not everybody can get a spot; you hear from me when you are offered one.",
      },
    ],
    because: `because somebody applied to test “${title}” with this address; if that was not you, the page above deletes it`,
  };
}
