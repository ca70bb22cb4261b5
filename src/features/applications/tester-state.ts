/** What has become of the place that an applicant was offered. */
export type TesterState = "asked" | "too late" | "accepted" | "declined" | "withdrawn" | "stopped";

/** The moments of a tester's row that say so. */
export interface TesterMoments {
  readonly invitationEndsAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly stoppedAt: Date | null;
}

/** @returns "too late" where she has not answered by the invitation's end; "withdrawn" where the designer took it back. */
export function testerState(tester: TesterMoments, now: Date): TesterState {
  if (tester.stoppedAt !== null) return "stopped";
  if (tester.acceptedAt !== null) return "accepted";
  if (tester.declinedAt !== null) return "declined";
  if (tester.withdrawnAt !== null) return "withdrawn";
  return tester.invitationEndsAt !== null && tester.invitationEndsAt <= now ? "too late" : "asked";
}

/** What is selected of a tester to say what became of her place. */
export const TESTER_SELECTED = {
  ...{ id: true, size: true, invitationEndsAt: true, acceptedAt: true, declinedAt: true },
  ...{ withdrawnAt: true, stoppedAt: true },
} as const;
