import { invitationState, type InvitationMoments, type InvitationState } from "@/features/calls/tester-status";

/** The state of an invitation, or that the tester's report was imported without one. */
export type TesterState = "brought in" | InvitationState;

interface TesterMoments extends InvitationMoments {
  readonly invitedAt: Date | null;
}

export function testerState(tester: TesterMoments, now: Date): TesterState {
  const state = invitationState(tester, now);
  return tester.invitedAt === null && (state === "invited" || state === "lapsed") ? "brought in" : state;
}

/** The same as the testers' `takesPlace`, of a row that is read already. */
export function takesPlaceNow(tester: TesterMoments, now: Date): boolean {
  const state = testerState(tester, now);
  return state === "brought in" || state === "invited" || state === "accepted";
}
