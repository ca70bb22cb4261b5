import { invitationState, type InvitationState } from "@/features/testers/schema";
import type { PlacedTester } from "./data";

/** What has become of an invitation, or that there was none: her report was brought in. */
export type TesterState = "brought in" | InvitationState;

export function testerState(tester: PlacedTester, now: Date): TesterState {
  const state = invitationState(tester, now);
  return tester.invitedAt === null && (state === "invited" || state === "lapsed") ? "brought in" : state;
}

/** The same as the testers' `takesPlace`, of a row that is read already. */
export function takesPlaceNow(tester: PlacedTester, now: Date): boolean {
  const state = testerState(tester, now);
  return state === "brought in" || state === "invited" || state === "accepted";
}
