const SENTENCES = {
  "not-found": "There is nothing at this address, or it is not yours to see.",
  "not-allowed": "You may look at this, but only its owner or an editor may change it.",
  "changed-meanwhile":
    "Somebody changed this while you were working on it. Reload to see their version; yours is kept.",
  closed: "This call is closed, so nothing can be added to it.",
  "nothing-to-send": "There is nothing in your report yet. Begin with your swatch.",
  "no-place":
    "A size has fewer places left than that. Somebody may have filled one meanwhile: reload, then place and send again.",
  "database-away":
    "The database does not answer just now. What you typed is still on this page; try again in a moment.",
  "signed-out":
    "You are signed out. Sign in in another tab, then try again here: what you typed is still on this page.",
  "form-too-large":
    "This is more than can be sent at once: 500 fields and 256 kB in all. Shorten the longest text and send it again.",
  "too-many-tries": "There were too many tries. Try again later.",
} as const;

export type AppErrorCode = keyof typeof SENTENCES;

/** A failure that people can be told about: one plain sentence a kind. Anything else is a bug and is thrown on. */
export class AppError extends Error {
  /** All that Next hands an error page of an error of the server. */
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
