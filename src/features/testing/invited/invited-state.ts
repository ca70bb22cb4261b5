import type { InvitedRead } from "./invited-data";

/** Who has opened an invitation's link. */
export interface Holder {
  /** Null if signed out. */
  readonly accountId: string | null;
  /** This browser has access to the tester's pages. */
  readonly isLetIn: boolean;
}

/** What an invitation is to whoever has opened its link. */
export type InvitedState =
  /** Can be answered. */
  | "open"
  /** It belongs to an account: another one is signed in, or none is. */
  | "another's"
  | "sign-in"
  | "ended"
  | "withdrawn"
  | "declined"
  | "closed"
  | "place-gone"
  /** Accepted, and this browser or account has access. */
  | "own"
  /** Accepted without an account: this browser can be given access. */
  | "go-on";

export function invitedState(read: InvitedRead, { accountId, isLetIn }: Holder, now: Date): InvitedState {
  if (read.accountId !== null && accountId !== read.accountId) return accountId === null ? "sign-in" : "another's";
  if (read.acceptedAt !== null) return read.accountId !== null || isLetIn ? "own" : "go-on";
  if (read.withdrawnAt !== null) return "withdrawn";
  if (read.declinedAt !== null) return "declined";
  if (read.isClosed) return "closed";
  if (read.expiresAt <= now) return "ended";
  return read.isPlaceGone ? "place-gone" : "open";
}
