import type { PlacedTester } from "./data";

/** What has become of an invitation, or that there was none: her report was brought in. */
export type TesterState = "brought in" | "invited" | "accepted" | "declined" | "withdrawn" | "lapsed" | "stopped";

export function testerState(tester: PlacedTester, now: Date): TesterState {
  if (tester.stoppedAt !== null) return "stopped";
  if (tester.withdrawnAt !== null) return "withdrawn";
  if (tester.declinedAt !== null) return "declined";
  if (tester.acceptedAt !== null) return "accepted";
  if (tester.invitedAt === null) return "brought in";
  return tester.invitationEndsAt !== null && tester.invitationEndsAt > now ? "invited" : "lapsed";
}

/** The same as the testers' `takesPlace`, of a row that is read already. */
export function takesPlaceNow(tester: PlacedTester, now: Date): boolean {
  const state = testerState(tester, now);
  return state === "brought in" || state === "invited" || state === "accepted";
}
