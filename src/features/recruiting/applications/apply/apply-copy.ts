import type { Refusal } from "./apply-answer";
import type { EXPERIENCES, WEARERS } from "../schema";

/** Why an application was refused, and what to do about it. */
export const REFUSAL_WORDS: Readonly<Record<Refusal, { readonly title: string; readonly message: string }>> = {
  over: {
    title: "Applications have closed",
    message: "The last day to apply has passed, so nothing was sent. Everything you typed is still here.",
  },
  closed: {
    title: "This test is closed",
    message: "The designer has closed it in the meantime, so nothing was sent. Everything you typed is still here.",
  },
  full: {
    title: "This test has enough applications",
    message:
      "It takes no more applications at the moment, so nothing was sent. If somebody withdraws, you can send yours: everything you typed is still here.",
  },
  gone: {
    title: "This tester call is no longer public",
    message:
      "The designer has unpublished it in the meantime, so nothing was sent. Everything you typed is still here.",
  },
  known: {
    title: "You have already applied for this test",
    message:
      "There is already an application with this e-mail address or this account. It was not changed, and nothing new was sent.",
  },
  agreement: {
    title: "The agreement has changed while you were reading",
    message:
      "Nothing was sent yet. Read the new text below and tick the box again if you agree. Everything else you typed is still here.",
  },
};

export const EXPERIENCE_WORDS: Readonly<Record<(typeof EXPERIENCES)[number], string>> = {
  first: "This would be my first test",
  some: "I have tested a few patterns",
  many: "I have tested many patterns",
};

/** What whoever makes the garment for somebody else confirms. */
export const WEARER_WORDS: Readonly<Record<(typeof WEARERS)[number], string>> = {
  adult: "An adult, who agrees that I send their measurements, and photos of the garment on them",
  child:
    "A child under 18. I am their parent or guardian, or have that person’s agreement, to send measurements and photos",
};

export const TERMS_WORDS = { us: "US", uk: "UK" } as const;

export const SHORT_EXPERIENCE: Readonly<Record<(typeof EXPERIENCES)[number], string>> = {
  first: "first test",
  some: "has tested a few",
  many: "has tested many",
};

export const DECISION_LABELS = {
  yes: "Yes",
  maybe: "Maybe",
  no: "No",
  undecided: "To decide",
  withdrawn: "Withdrawn",
  all: "All",
} as const;
