import type { OwnApplication } from "./own-data";

/** The state of an application for its applicant. */
export type OwnState =
  "sent" | "withdrawn" | "offered" | "too late" | "declined" | "taken back" | "testing" | "stopped";

/** @returns "declined" also if the application was withdrawn after an invitation. */
export function ownState({ tester, withdrawnAt }: Pick<OwnApplication, "tester" | "withdrawnAt">): OwnState {
  if (tester === null) return withdrawnAt === null ? "sent" : "withdrawn";
  switch (tester.state) {
    case "invited":
      return "offered";
    case "lapsed":
      return withdrawnAt === null ? "too late" : "declined";
    case "accepted":
      return "testing";
    case "withdrawn":
      return "taken back";
    case "declined":
    case "stopped":
      return tester.state;
  }
}

/** It can still be withdrawn; that declines an offered spot. */
export function canWithdraw(state: OwnState): boolean {
  return state === "sent" || state === "offered" || state === "too late";
}
