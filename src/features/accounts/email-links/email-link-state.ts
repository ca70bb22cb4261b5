/** Why a mailed link cannot be used any more. */
export type EmailLinkEnd = "used" | "replaced" | "expired";

interface EmailLinkRow {
  readonly usedAt: Date | null;
  readonly replacedAt: Date | null;
  readonly expiresAt: Date;
  /** Of its account when it was asked for, and now. */
  readonly sessionVersion: number | null;
  readonly currentVersion: number | null;
}

/** Why a mailed link cannot be used; null where it can. */
export function emailLinkEnd(row: EmailLinkRow, now: Date): EmailLinkEnd | null {
  if (row.usedAt !== null) return "used";
  if (row.replacedAt !== null || row.sessionVersion !== row.currentVersion) return "replaced";
  return row.expiresAt <= now ? "expired" : null;
}
