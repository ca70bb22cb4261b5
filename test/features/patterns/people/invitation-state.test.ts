import { expect, it } from "vitest";
import { invitationState } from "../../../../src/features/patterns/people/invitation-state";

const NOW = new Date("2026-03-01T12:00:00Z");
const BEA = "bea";

const open = {
  patternId: "pattern",
  patternName: "Vest",
  ownerName: "Ana",
  role: "editor",
  expiresAt: new Date("2026-03-02T12:00:00Z"),
  withdrawnAt: null,
  acceptedAt: null,
  acceptedById: null,
  holderRole: null,
} as const;

it("invites a visitor and a stranger by the pattern's name, its owner's and what for, and tells nothing else", () => {
  const invites = {
    status: "open",
    patternName: "Vest",
    ownerName: "Ana",
    role: "editor",
    expiresAt: open.expiresAt,
    raises: false,
  };
  expect(invitationState(open, null, NOW)).toEqual(invites);
  expect(invitationState(open, BEA, NOW)).toEqual(invites);
});

it("invites who may look to more, and nobody to less", () => {
  expect(invitationState({ ...open, holderRole: "viewer" }, BEA, NOW)).toMatchObject({ status: "open", raises: true });
  const joined = { status: "joined", patternId: "pattern" };
  expect(invitationState({ ...open, holderRole: "editor" }, BEA, NOW)).toEqual({ ...joined, role: "editor" });
  const toLook = { ...open, role: "viewer" } as const;
  expect(invitationState({ ...toLook, holderRole: "viewer" }, BEA, NOW)).toEqual({ ...joined, role: "viewer" });
  expect(invitationState({ ...toLook, holderRole: "editor" }, BEA, NOW)).toEqual({ ...joined, role: "editor" });
});

it("recognises the owner of the pattern", () => {
  expect(invitationState({ ...open, holderRole: "owner" }, "ana", NOW)).toEqual({ status: "own" });
});

it("ends at its very moment", () => {
  expect(invitationState({ ...open, expiresAt: NOW }, null, NOW)).toEqual({ status: "ended", at: NOW });
  expect(invitationState({ ...open, expiresAt: new Date(NOW.getTime() + 1) }, null, NOW).status).toBe("open");
});

it("is used for all but who took it, whom it leads on for as long as there is a part", () => {
  const taken = { ...open, acceptedAt: NOW, acceptedById: BEA };
  expect(invitationState(taken, null, NOW)).toEqual({ status: "used" });
  expect(invitationState({ ...taken, holderRole: "viewer" }, "vera", NOW)).toEqual({ status: "used" });
  expect(invitationState({ ...taken, holderRole: "editor" }, BEA, NOW)).toEqual({
    status: "taken",
    patternId: "pattern",
  });
  expect(invitationState(taken, BEA, NOW)).toEqual({ status: "left" });
  // Its account is deleted: nobody took it, and it is used.
  expect(invitationState({ ...taken, acceptedById: null }, null, NOW)).toEqual({ status: "used" });
});

it("is withdrawn, also once its end has come", () => {
  const withdrawn = { ...open, withdrawnAt: NOW, expiresAt: NOW };
  expect(invitationState(withdrawn, null, NOW)).toEqual({ status: "withdrawn" });
});
