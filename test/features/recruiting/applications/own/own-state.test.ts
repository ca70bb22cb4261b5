import { describe, expect, it } from "vitest";
import { canWithdraw, ownState } from "../../../../../src/features/recruiting/applications/own/own-state";
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

  it("is shown to its applicant, who can withdraw until the invitation is answered", () => {
    const states = [
      ownState({ tester: null, withdrawnAt: null }),
      ownState({ tester: null, withdrawnAt: NOW }),
      ownState({ tester: tester("invited"), withdrawnAt: null }),
      ownState({ tester: tester("lapsed"), withdrawnAt: null }),
      ownState({ tester: tester("declined"), withdrawnAt: NOW }),
      ownState({ tester: tester("withdrawn"), withdrawnAt: null }),
      ownState({ tester: tester("accepted"), withdrawnAt: null }),
    ];
    expect(states).toEqual(["sent", "withdrawn", "offered", "too late", "declined", "taken back", "testing"]);
    expect(states.filter(canWithdraw)).toEqual(["sent", "offered", "too late"]);
  });
});
