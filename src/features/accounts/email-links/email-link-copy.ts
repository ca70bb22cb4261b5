import type { MessageContent } from "@/features/mail/schema";
import type { EmailLinkEnd } from "./email-link-state";

type LinkWords = Pick<MessageContent, "subject" | "because"> & {
  readonly text: string;
  readonly link: string;
  readonly otherwise: string;
};

const ONCE = "It works once, for one hour.";

export const LINK_WORDS = {
  "sign-in-link": {
    subject: "Your link to sign in to Sizewright",
    text: `With this link you can sign in, and choose a new password if you want one. ${ONCE}`,
    link: "Sign in",
    otherwise: "If you did not ask for it, you need not do anything: your account is as it was.",
    because: "because somebody asked for a link to sign in with this address",
  },
  "sign-up-link": {
    subject: "Create your Sizewright account",
    text: `With this link you confirm your address and create your account. ${ONCE}`,
    link: "Create your account",
    otherwise: "If you did not ask for it, you need not do anything: without this link no account is created.",
    because: "because somebody entered this address to create an account",
  },
  "sign-up-known": {
    subject: "You already have a Sizewright account",
    text: `Somebody, probably you, wanted to create an account with this address. You have one already. With this link you can sign in, and choose a new password if you want one. ${ONCE}`,
    link: "Sign in",
    otherwise: "If that was not you, you need not do anything: your account is as it was.",
    because: "because somebody entered this address to create an account",
  },
} as const satisfies Record<string, LinkWords>;

export type LinkMessageKind = keyof typeof LINK_WORDS;

export const ENDED: Readonly<Record<EmailLinkEnd, { readonly title: string; readonly text: string }>> = {
  used: { title: "This link has been used", text: "Each link works once. Ask for another one here." },
  replaced: {
    title: "This link has been replaced",
    text: "A newer link was sent, or the password was changed since. Open the newest message, or ask for another link here.",
  },
  expired: { title: "This link has expired", text: "A link works for one hour. Ask for another one here." },
};
