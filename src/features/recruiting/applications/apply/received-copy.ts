import type { LinkTarget, MessageContent } from "@/features/mail/schema";

interface Received {
  readonly name: string;
  /** The test. */
  readonly title: string;
  readonly designer: { readonly name: string; readonly email: string } | null;
  readonly ownLink: LinkTarget;
}

/** An application has come in, with the way back to it. */
export function receivedContent({ name, title, designer, ownLink }: Received): MessageContent {
  return {
    ...{ subject: `Your application to test “${title}”`, name, from: designer },
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
