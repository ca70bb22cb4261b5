import type { InvitedRead } from "./invited-data";

/** Who has opened an invitation's link. */
export interface Holder {
  /** Null for who is signed in as nobody. */
  readonly accountId: string | null;
  /** This browser has been let in to the tester's pages. */
  readonly isLetIn: boolean;
}

/** What an invitation is to whoever has opened its link. */
export type InvitedState =
  /** She can answer. */
  | "open"
  /** It is for another account than the one that is signed in, or for one and nobody is. */
  | "another's"
  | "sign-in"
  | "ended"
  | "withdrawn"
  | "declined"
  | "closed"
  | "place-gone"
  /** Accepted, and this browser or account is let in. */
  | "hers"
  /** Accepted, without an account: this browser can be let in. */
  | "go-on";

export function invitedState(read: InvitedRead, { accountId, isLetIn }: Holder, now: Date): InvitedState {
  if (read.accountId !== null && accountId !== read.accountId) return accountId === null ? "sign-in" : "another's";
  if (read.acceptedAt !== null) return read.accountId !== null || isLetIn ? "hers" : "go-on";
  if (read.withdrawnAt !== null) return "withdrawn";
  if (read.declinedAt !== null) return "declined";
  if (read.isClosed) return "closed";
  if (read.endsAt <= now) return "ended";
  return read.isPlaceGone ? "place-gone" : "open";
}
