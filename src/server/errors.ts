const SENTENCES = {
  "not-found": "There is nothing at this address, or it is not yours to see.",
  "not-allowed": "You may look at this, but only its owner or an editor may change it.",
  "changed-meanwhile":
    "Somebody changed this while you were working on it. Reload to see their version; yours is kept.",
  closed: "This call is closed, so nothing can be added to it.",
  "database-away":
    "The database does not answer just now. What you typed is still on this page; try again in a moment.",
} as const;

export type AppErrorCode = keyof typeof SENTENCES;

/** A failure that people can be told about: one plain sentence a kind. Anything else is a bug and is thrown on. */
export class AppError extends Error {
  constructor(readonly code: AppErrorCode) {
    super(SENTENCES[code]);
    this.name = "AppError";
  }
}
