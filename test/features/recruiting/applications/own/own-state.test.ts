import { describe, expect, it } from "vitest";
import {
  canWithdraw,
  ownState,
  type Deciding,
} from "../../../../../src/features/recruiting/applications/own/own-state";
import { invitationState } from "../../../../../src/features/calls/tester-status";

const [BEFORE, NOW, AFTER] = [new Date(1), new Date(2), new Date(3)];
const NO_ANSWER = {
  invitationExpiresAt: AFTER,
  acceptedAt: null,
  declinedAt: null,
  withdrawnAt: null,
  stoppedAt: null,
};

describe("what became of a place", () => {
  it("is the last answer, or that none came in time", () => {
    expect(invitationState(NO_ANSWER, NOW)).toBe("invited");
    expect(invitationState({ ...NO_ANSWER, invitationExpiresAt: NOW }, NOW)).toBe("lapsed");
    expect(invitationState({ ...NO_ANSWER, acceptedAt: BEFORE, invitationExpiresAt: BEFORE }, NOW)).toBe("accepted");
    expect(invitationState({ ...NO_ANSWER, acceptedAt: BEFORE, stoppedAt: NOW }, NOW)).toBe("stopped");
    expect(invitationState({ ...NO_ANSWER, declinedAt: NOW }, NOW)).toBe("declined");
    expect(invitationState({ ...NO_ANSWER, withdrawnAt: NOW }, NOW)).toBe("withdrawn");
  });
});

describe("how an application stands", () => {
  const tester = (state: ReturnType<typeof invitationState>) => ({ testerId: "t", size: "m", state });
  const day = (at: Date) => ({ day: "2026-01-01", at });
  const listed = (applyUntil: Date, startOn: Date) => ({
    timeZone: "UTC",
    dates: { applyUntil: day(applyUntil), startOn: day(startOn), swatchBy: day(AFTER), reportBy: day(AFTER) },
  });
  const SENT: Deciding = {
    ...{ tester: null, withdrawnAt: null, decision: null, isClosed: false },
    listing: listed(AFTER, AFTER),
  };
  const state = (change: Partial<Deciding>) => ownState({ ...SENT, ...change }, NOW);

  it("is shown to its applicant, who can withdraw until the invitation is answered", () => {
    const states = [
      state({}),
      state({ withdrawnAt: NOW }),
      state({ tester: tester("invited") }),
      state({ tester: tester("lapsed") }),
      state({ tester: tester("declined"), withdrawnAt: NOW }),
      state({ tester: tester("withdrawn") }),
      state({ tester: tester("accepted") }),
    ];
    expect(states).toEqual(["sent", "withdrawn", "offered", "too late", "declined", "taken back", "testing"]);
    expect(states.filter(canWithdraw)).toEqual(["sent", "offered", "too late"]);
  });

  it("says when nobody can apply any more, and when the test has started without them", () => {
    expect(state({ listing: listed(NOW, AFTER) })).toBe("waiting");
    expect(state({ listing: listed(BEFORE, NOW) })).toBe("no spot yet");
    expect([state({ listing: listed(NOW, AFTER) }), state({ listing: listed(BEFORE, NOW) })].every(canWithdraw)).toBe(
      true,
    );
  });

  it("tells a designer's no once nobody can apply any more, and not while they may change their mind", () => {
    expect(state({ decision: "no" })).toBe("sent");
    expect(state({ decision: "no", listing: listed(NOW, AFTER) })).toBe("not chosen");
    expect(state({ decision: "no", listing: listed(BEFORE, BEFORE) })).toBe("not chosen");
    expect(state({ decision: "no", isClosed: true })).toBe("not chosen");
    expect(canWithdraw("not chosen")).toBe(false);
  });

  it("says that a test was closed, also to somebody whose offer was still open", () => {
    expect(state({ isClosed: true })).toBe("closed");
    expect(state({ isClosed: true, tester: tester("invited") })).toBe("closed");
    expect(state({ isClosed: true, tester: tester("accepted") })).toBe("testing");
    expect(canWithdraw("closed")).toBe(false);
  });
});
