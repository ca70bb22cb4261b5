const SENTENCES = {
  "not-found": "This page does not exist, or you don’t have access to it.",
  "not-allowed": "You can see this. Only its owner or an editor can change it.",
  "changed-meanwhile":
    "Someone changed this while you were working on it. Reload the page to see their version; yours is stored.",
  closed: "This test is closed, so nothing can be added.",
  "nothing-to-send": "Your report is empty. Start with your swatch.",
  "no-place":
    "This size has too few open spots. Someone may have filled one in the meantime: reload the page, assign sizes and send again.",
  "database-away": "The database is not responding. What you typed is still on this page. Try again in a moment.",
  "signed-out":
    "You are signed out. Sign in in another tab, then try again here: what you typed is still on this page.",
  "form-too-large":
    "This is too much to send at once: the limit is 500 fields and 256 kB. Shorten the longest text and send it again.",
  "too-many-tries": "Too many attempts. Try again later.",
} as const;

export type AppErrorCode = keyof typeof SENTENCES;

/** A failure with a message for people: one sentence per kind. Anything else is a bug and is thrown again. */
export class AppError extends Error {
  /** The only data about a server error that Next gives to an error page. */
  readonly digest: string;

  /** @param says a sentence that says more than the code's own. */
  constructor(
    readonly code: AppErrorCode,
    says: string = SENTENCES[code],
  ) {
    super(says);
    this.name = "AppError";
    this.digest = code;
  }
}
