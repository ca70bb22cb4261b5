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
  "prove-address": {
    subject: "Confirm your address for Sizewright",
    text: `With this link you confirm that this address is yours. ${ONCE}`,
    link: "Confirm address",
    otherwise: "If you did not ask for it, you need not do anything.",
    because: "because somebody who is signed in with this address asked to confirm it",
  },
  "change-address": {
    subject: "Use this address for Sizewright",
    text: `With this link your Sizewright account gets this address: you then sign in with it, and mail comes here. ${ONCE}`,
    link: "Use this address",
    otherwise: "If you did not ask for it, you need not do anything: without this link nothing changes.",
    because: "because somebody entered this address for their account",
  },
  "delete-account": {
    subject: "Delete your Sizewright account",
    text: `With this link you can delete your account. It first shows you what is deleted. ${ONCE}`,
    link: "Look at what is deleted",
    otherwise: "If you did not ask for it, do not open the link: somebody who is signed in as you asked for it.",
    because: "because somebody who is signed in with this address asked to delete the account",
  },
} as const satisfies Record<string, LinkWords>;

/** Mail about an address that holds no link. */
export const ADDRESS_WORDS = {
  "address-known": {
    subject: "This address has a Sizewright account already",
    text: "Somebody, probably you, wanted to use this address for another account. It has an account already, so nothing was changed. To use the address there, first give this account another one, or delete it.",
    because: "because somebody entered this address for their account",
  },
  "address-changed": {
    subject: "Your Sizewright account has another address now",
    text: "From now on you sign in to Sizewright with another address, and mail goes there. If that was not you, tell whoever runs this Sizewright at once.",
    because: "because your account had this address",
  },
} as const satisfies Record<string, Pick<LinkWords, "subject" | "text" | "because">>;

export type LinkMessageKind = keyof typeof LINK_WORDS;

export const ENDED: Readonly<Record<EmailLinkEnd, { readonly title: string; readonly text: string }>> = {
  used: { title: "This link has been used", text: "Each link works once. Ask for another one here." },
  replaced: {
    title: "This link has been replaced",
    text: "A newer link was sent, or the password was changed since. Open the newest message, or ask for another link here.",
  },
  expired: { title: "This link has expired", text: "A link works for one hour. Ask for another one here." },
};
