/** The state of an invitation. */
export type InvitationState = "invited" | "lapsed" | "accepted" | "declined" | "withdrawn" | "stopped";

/** The moments of a tester's row that decide it. */
export interface InvitationMoments {
  readonly invitationExpiresAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly stoppedAt: Date | null;
}

/** @returns "lapsed" if it was not answered in time; "withdrawn" if the designer withdrew it. */
export function invitationState(tester: InvitationMoments, now: Date): InvitationState {
  if (tester.stoppedAt !== null) return "stopped";
  if (tester.withdrawnAt !== null) return "withdrawn";
  if (tester.declinedAt !== null) return "declined";
  if (tester.acceptedAt !== null) return "accepted";
  return tester.invitationExpiresAt !== null && tester.invitationExpiresAt <= now ? "lapsed" : "invited";
}
