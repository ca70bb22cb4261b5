import type { OwnApplication } from "./own-data";

/** The state of an application for its applicant. */
export type OwnState =
  /** People can still apply. */
  | "sent"
  /** Nobody can apply any more, and the sizes are being assigned. */
  | "waiting"
  /** The test has started without them; a spot can still open up. */
  | "no spot yet"
  /** The designer's no, shown once nobody can apply any more: until then they may change their mind. */
  | "not chosen"
  /** The test is closed, and they were no part of it. */
  | "closed"
  | "withdrawn"
  | "offered"
  | "too late"
  | "declined"
  | "taken back"
  | "testing"
  | "stopped";

export type Deciding = Pick<OwnApplication, "tester" | "withdrawnAt" | "decision" | "isClosed" | "listing">;

/** @returns "declined" also if the application was withdrawn after an invitation. */
export function ownState(application: Deciding, now: Date): OwnState {
  const { tester, withdrawnAt, isClosed } = application;
  if (tester === null) return withdrawnAt === null ? withoutSpot(application, now) : "withdrawn";
  switch (tester.state) {
    case "invited":
      return isClosed ? "closed" : "offered";
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

function withoutSpot({ decision, isClosed, listing }: Deciding, now: Date): OwnState {
  const isOver = isClosed || (listing !== null && listing.dates.applyUntil.at <= now);
  if (isOver && decision === "no") return "not chosen";
  if (isClosed) return "closed";
  if (!isOver) return "sent";
  return listing !== null && listing.dates.startOn.at <= now ? "no spot yet" : "waiting";
}

/** It can still be withdrawn; that declines an offered spot. */
export function canWithdraw(state: OwnState): boolean {
  return isConsidered(state) || state === "offered" || state === "too late";
}

/** It has no spot, and can still get one. */
export function isConsidered(state: OwnState): boolean {
  return state === "sent" || state === "waiting" || state === "no spot yet";
}
