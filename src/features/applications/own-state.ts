import type { OwnApplication } from "./own-data";

/** How an application stands, for who made it. */
export type OwnState =
  "sent" | "withdrawn" | "offered" | "too late" | "declined" | "taken back" | "testing" | "stopped";

/** @returns "declined" also where she withdrew after a place was offered. */
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

/** She can still take it back: by it she declines a place that is offered. */
export function canWithdraw(state: OwnState): boolean {
  return state === "sent" || state === "offered" || state === "too late";
}
