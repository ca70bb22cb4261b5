import { beforeEach, describe, expect, it } from "vitest";
import { invitationAccess, patternAccess, type HelperRole, type PatternAccess } from "@/features/patterns/access";
import { listInvitations, readInvitation } from "../../src/features/patterns/people/invitation-data";
import { proveToken } from "../../src/features/patterns/people/prove-token";
import {
  acceptInvitation,
  createInvitation,
  withdrawInvitation,
} from "../../src/features/patterns/people/invitation-mutations";
import { createPattern } from "@/features/patterns/mutations";
import { database, pool } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";

let patternId: string;
let owner: Viewer;
let own: PatternAccess;

async function join(role: HelperRole, name: string): Promise<Viewer> {
  const viewer = await makeViewer(name);
  await database().membership.create({ data: { patternId, accountId: viewer.accountId, role } });
  return viewer;
}

async function makeInvitation(role: HelperRole) {
  const { token } = await createInvitation(own, { role, note: "" });
  return await invitationAccess(token);
}

/** What part somebody has in the pattern, null where none. */
async function partOf({ accountId }: Viewer): Promise<string | null> {
  const key = { patternId, accountId };
  return (await database().membership.findUnique({ where: { patternId_accountId: key } }))?.role ?? null;
}

beforeEach(async () => {
  owner = await makeViewer("Ana");
  ({ patternId } = await createPattern(owner, { document: patternDocument(), reason: "first" }));
  own = await patternAccess(owner, patternId, "owner");
});

describe("a link", () => {
  it("holds 32 random bytes, ends after 14 days, and is kept as nothing but its hash", async () => {
    const made = await createInvitation(own, { role: "viewer", note: "for the editor" });
    expect(Buffer.from(made.token, "base64url")).toHaveLength(32);
    const { rows } = await pool().query("SELECT * FROM invitation WHERE pattern_id = $1", [patternId]);
    expect(JSON.stringify(rows)).not.toContain(made.token);
    const [listed] = await listInvitations(own);
    expect(listed).toMatchObject({ role: "viewer", note: "for the editor", expiresAt: made.expiresAt });
    const days = (made.expiresAt.getTime() - (listed?.createdAt.getTime() ?? 0)) / 86_400_000;
    expect(days).toBe(14);
  });

  it("is another each time", async () => {
    const tokens = await Promise.all(
      Array.from({ length: 5 }, async () => (await createInvitation(own, { role: "viewer", note: "" })).token),
    );
    expect(new Set(tokens).size).toBe(5);
  });

  it("is made, listed and withdrawn by the owner alone", async () => {
    const invitation = await makeInvitation("editor");
    const helpers = await Promise.all([join("editor", "Bea"), join("viewer", "Vera")]);
    for (const helper of helpers) {
      await expect(patternAccess(helper, patternId, "owner")).rejects.toMatchObject({ code: "not-allowed" });
      const theirs = await patternAccess(helper, patternId, "viewer");
      await expect(createInvitation(theirs, { role: "viewer", note: "" })).rejects.toMatchObject({ code: "not-found" });
      await expect(withdrawInvitation(theirs, invitation.invitationId)).rejects.toMatchObject({
        code: "changed-meanwhile",
      });
      expect(await listInvitations(theirs)).toEqual([]);
    }
    expect(await listInvitations(own)).toHaveLength(1);
  });

  it("is withdrawn by no other pattern's owner", async () => {
    const invitation = await makeInvitation("editor");
    const sam = await makeViewer("Sam");
    const other = await createPattern(sam, { document: patternDocument(), reason: "first" });
    const elsewhere = await patternAccess(sam, other.patternId, "owner");
    await expect(withdrawInvitation(elsewhere, invitation.invitationId)).rejects.toMatchObject({
      code: "changed-meanwhile",
    });
    expect(await listInvitations(elsewhere)).toEqual([]);
    expect(await listInvitations(own)).toHaveLength(1);
  });

  it("shows its holder the pattern's newest name, its owner's name and their role", async () => {
    const invitation = await makeInvitation("editor");
    const vera = await join("viewer", "Vera");
    expect(await readInvitation(invitation, null)).toMatchObject({
      patternName: "Test vest",
      ownerName: "Ana",
      role: "editor",
      holderRole: null,
    });
    expect(await readInvitation(invitation, vera)).toMatchObject({ holderRole: "viewer" });
    expect(await readInvitation(invitation, owner)).toMatchObject({ holderRole: "owner" });
  });

  it("is not to be had by guessing, whatever the guess looks like", async () => {
    for (const guess of ["", "x", "constructor", "a".repeat(43), "a".repeat(5_000), "%00", "\u0000"])
      await expect(invitationAccess(guess), guess).rejects.toMatchObject({ code: "not-found" });
  });
});

describe("guesses", () => {
  it("from one address are stopped after 40, whatever is tried then, and good links count as none", async () => {
    const { token } = await createInvitation(own, { role: "viewer", note: "" });
    for (let guess = 0; guess < 40; guess += 1) {
      await proveToken(token, "203.0.113.7");
      await expect(proveToken(`guess ${guess}`, "203.0.113.7")).rejects.toMatchObject({ code: "not-found" });
    }
    await expect(proveToken("one more", "203.0.113.7")).rejects.toMatchObject({ code: "too-many-tries" });
    await expect(proveToken(token, "203.0.113.7")).rejects.toMatchObject({ code: "too-many-tries" });
    await expect(proveToken(token, "203.0.113.8")).resolves.toBeDefined();
  });
});

describe("taking it", () => {
  it.each(["editor", "viewer"] as const)("gives the part that it is for: %s", async (role) => {
    const invitation = await makeInvitation(role);
    const bea = await makeViewer("Bea");
    expect(await acceptInvitation(invitation, bea)).toBe(patternId);
    expect(await partOf(bea)).toBe(role);
    expect((await patternAccess(bea, patternId, "viewer")).role).toBe(role);
    expect(await listInvitations(own)).toEqual([]);
    expect(await readInvitation(invitation, bea)).toMatchObject({ acceptedById: bea.accountId, holderRole: role });
  });

  it("works once", async () => {
    const invitation = await makeInvitation("editor");
    const [bea, sam] = [await makeViewer("Bea"), await makeViewer("Sam")];
    await acceptInvitation(invitation, bea);
    expect(await acceptInvitation(invitation, sam)).toBeNull();
    expect(await acceptInvitation(invitation, bea)).toBeNull();
    expect(await partOf(sam)).toBeNull();
  });

  it("lets one of many who press at once win", async () => {
    const people = await Promise.all(Array.from({ length: 8 }, (_, at) => makeViewer(`Person ${at}`)));
    for (let round = 0; round < 5; round += 1) {
      const invitation = await makeInvitation("viewer");
      await database().membership.deleteMany({ where: { patternId, role: "viewer" } });
      const taken = await Promise.all(people.map((person) => acceptInvitation(invitation, person)));
      expect(taken.filter((id) => id !== null)).toEqual([patternId]);
      const parts = await Promise.all(people.map(partOf));
      expect(parts.map((part) => part !== null)).toEqual(taken.map((id) => id !== null));
    }
  });

  it("and withdrawing at once: one of them wins, and the rows say the same", async () => {
    for (let round = 0; round < 8; round += 1) {
      const invitation = await makeInvitation("viewer");
      const bea = await makeViewer("Bea");
      const [taken, withdrawn] = await Promise.allSettled([
        acceptInvitation(invitation, bea),
        withdrawInvitation(own, invitation.invitationId),
      ]);
      const isTaken = taken.status === "fulfilled" && taken.value !== null;
      expect(isTaken).toBe(withdrawn.status === "rejected");
      expect(await partOf(bea)).toBe(isTaken ? "viewer" : null);
    }
  });

  it("is too late once it is withdrawn, or has ended", async () => {
    const bea = await makeViewer("Bea");
    const withdrawn = await makeInvitation("editor");
    await withdrawInvitation(own, withdrawn.invitationId);
    expect(await acceptInvitation(withdrawn, bea)).toBeNull();
    await expect(withdrawInvitation(own, withdrawn.invitationId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    const ended = await makeInvitation("editor");
    await pool().query(
      "UPDATE invitation SET created_at = now() - interval '15 days', expires_at = now() - interval '1 second' WHERE id = $1",
      [ended.invitationId],
    );
    expect(await acceptInvitation(ended, bea)).toBeNull();
    expect(await partOf(bea)).toBeNull();
    expect(await listInvitations(own)).toHaveLength(1);
  });

  it("raises who may look to who may edit, and lowers nobody", async () => {
    const [bea, vera] = [await join("editor", "Bea"), await join("viewer", "Vera")];
    const forLooking = await makeInvitation("viewer");
    for (const person of [bea, vera, owner]) expect(await acceptInvitation(forLooking, person)).toBeNull();
    const forEditing = await makeInvitation("editor");
    for (const person of [bea, owner]) expect(await acceptInvitation(forEditing, person)).toBeNull();
    expect(await acceptInvitation(forEditing, vera)).toBe(patternId);
    expect([await partOf(owner), await partOf(bea), await partOf(vera)]).toEqual(["owner", "editor", "editor"]);
    // Nobody has spent the link that would have added nothing.
    expect(await listInvitations(own)).toHaveLength(1);
  });

  it("leaves who takes two links at once the larger part", async () => {
    for (let round = 0; round < 8; round += 1) {
      const bea = await makeViewer("Bea");
      const links = await Promise.all([makeInvitation("editor"), makeInvitation("viewer")]);
      await Promise.all(links.map((link) => acceptInvitation(link, bea)));
      expect(await partOf(bea)).toBe("editor");
    }
  });

  it("is remembered as used where the account is deleted since", async () => {
    const invitation = await makeInvitation("viewer");
    const bea = await makeViewer("Bea");
    await acceptInvitation(invitation, bea);
    await database().account.delete({ where: { id: bea.accountId } });
    const read = await readInvitation(invitation, null);
    expect(read.acceptedAt).not.toBeNull();
    expect(read.acceptedById).toBeNull();
    expect(await acceptInvitation(invitation, await makeViewer("Sam"))).toBeNull();
  });
});

it.each([
  ["an owner's part", "role = 'owner'", "invitation_of_a_helper"],
  ["a token in the open", "token_hash = 'secret'", "invitation_token_hash_sha256"],
  ["an end before its beginning", "expires_at = created_at", "invitation_expires_later"],
  ["being both taken and withdrawn", "accepted_at = now(), withdrawn_at = now()", "invitation_one_end"],
  [
    "somebody who took it before it was taken",
    "accepted_by_id = (SELECT id FROM account LIMIT 1)",
    "invitation_taken_by_somebody",
  ],
])("the database refuses an invitation %s", async (_what, change, constraint) => {
  const { invitationId } = await makeInvitation("viewer");
  const update = pool().query(`UPDATE invitation SET ${change} WHERE id = $1`, [invitationId]);
  await expect(update).rejects.toMatchObject({ constraint });
});
