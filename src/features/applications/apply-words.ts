import type { Refusal } from "./apply-form";
import type { EXPERIENCES } from "./schema";

/** What somebody who applies is told, and what to do about it. */
export const REFUSAL_WORDS: Readonly<Record<Refusal, { readonly title: string; readonly says: string }>> = {
  over: {
    title: "The time to apply is over",
    says: "The last day to apply has passed, so that nothing was sent. All that you typed still stands here.",
  },
  closed: {
    title: "This call is closed",
    says: "The designer has closed it meanwhile, so that nothing was sent. All that you typed still stands here.",
  },
  full: {
    title: "All places for applications are taken",
    says: "The call has as many applications as it can take, so that nothing was sent. If somebody withdraws, you can send yours: all that you typed still stands here.",
  },
  gone: {
    title: "This call is no longer public",
    says: "The designer has taken it back meanwhile, so that nothing was sent. All that you typed still stands here.",
  },
  known: {
    title: "You have applied to this call before",
    says: "There is an application by this e-mail address or this account. Nothing of it was changed, and nothing was sent.",
  },
  agreement: {
    title: "The agreement was changed while you were reading",
    says: "Nothing was sent yet. The new text stands below: read it, and tick it again if you agree. All else that you typed still stands here.",
  },
};

export const EXPERIENCE_WORDS: Readonly<Record<(typeof EXPERIENCES)[number], string>> = {
  first: "This would be my first test",
  some: "I have tested a few patterns",
  many: "I have tested many patterns",
};

export const TERMS_WORDS = { us: "US", uk: "UK" } as const;

export const SHORT_EXPERIENCE: Readonly<Record<(typeof EXPERIENCES)[number], string>> = {
  first: "first test",
  some: "has tested a few",
  many: "has tested many",
};

export const WORD_WORDS = {
  yes: "Yes",
  maybe: "Maybe",
  no: "No",
  undecided: "Not decided",
  withdrawn: "Withdrawn",
  all: "All",
} as const;
