import type { LinkTarget, MessageContent } from "@/features/mail/schema";

interface WithoutSpot {
  readonly name: string;
  /** The test. */
  readonly title: string;
  readonly designer: { readonly name: string; readonly email: string } | null;
  readonly ownLink: LinkTarget;
  /** They were declined, or the test is closed; else a spot can still open up. */
  readonly isFinal: boolean;
}

/** They applied, and have no spot. */
export function noSpotContent({ name, title, designer, ownLink, isFinal }: WithoutSpot): MessageContent {
  return {
    ...{
      subject: isFinal ? `No spot this time in “${title}”` : `All spots in “${title}” are given`,
      name,
      from: designer,
    },
    parts: [
      {
        text: isFinal
          ? `Thank you for offering to test “${title}”. I could not give you a spot this time.`
          : `Thank you for offering to test “${title}”. More people applied than there are spots, and all of them are given for now. If one opens up that fits you, I will write to you.`,
      },
      { text: "You need not do anything. On your page you can delete all that you sent." },
      { link: "Open your application", to: ownLink },
    ],
    because: `because you applied to test “${title}”`,
  };
}
