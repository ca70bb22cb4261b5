import { beforeEach, expect, it } from "vitest";
import { patternAccess, type HelperRole, type PatternAccess } from "@/features/patterns/access";
import { draftOf, conflictingDraftOf, listRevisions } from "@/features/patterns/data";
import { saveDraft } from "@/features/patterns/draft-mutations";
import { createPattern, saveRevision } from "@/features/patterns/mutations";
import { listPeople } from "../../src/features/patterns/people/people-data";
import { changeRole, leavePattern, removePerson } from "../../src/features/patterns/people/people-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { patternDocument, widthTyped } from "../factories/pattern";
import { makeViewer } from "./make-account";

let patternId: string;
let owner: Viewer;
let own: PatternAccess;
let bea: Viewer;
let vera: Viewer;

async function join(role: HelperRole, viewer: Viewer): Promise<Viewer> {
  await database().membership.create({ data: { patternId, accountId: viewer.accountId, role } });
  return viewer;
}

async function roles(): Promise<Record<string, string>> {
  return Object.fromEntries((await listPeople(own)).map(({ name, role }) => [name, role]));
}

beforeEach(async () => {
  owner = await makeViewer("Ana");
  ({ patternId } = await createPattern(owner, { document: patternDocument(), reason: "first" }));
  own = await patternAccess(owner, patternId, "owner");
  vera = await join("viewer", await makeViewer("Vera"));
  bea = await join("editor", await makeViewer("Bea"));
});

it("lists the owner, who may edit and who may look, since when, to everybody with a part", async () => {
  const seen = await listPeople(await patternAccess(vera, patternId, "viewer"));
  expect(seen.map(({ name, role }) => [name, role])).toEqual([
    ["Ana", "owner"],
    ["Bea", "editor"],
    ["Vera", "viewer"],
  ]);
  for (const { since } of seen) expect(Math.abs(Date.now() - since.getTime())).toBeLessThan(60_000);
});

it("lets the owner change a helper's part, and end it", async () => {
  await changeRole(own, vera.accountId, "editor");
  await changeRole(own, bea.accountId, "viewer");
  expect(await roles()).toEqual({ Ana: "owner", Bea: "viewer", Vera: "editor" });
  await removePerson(own, bea.accountId);
  expect(await roles()).toEqual({ Ana: "owner", Vera: "editor" });
  await expect(patternAccess(bea, patternId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  await expect(removePerson(own, bea.accountId)).rejects.toMatchObject({ code: "not-found" });
  await expect(changeRole(own, bea.accountId, "editor")).rejects.toMatchObject({ code: "not-found" });
});

it("lets no helper and no other owner do so, by a proof of their own or by one that is out of date", async () => {
  const sam = await makeViewer("Sam");
  const other = await createPattern(sam, { document: patternDocument(), reason: "first" });
  const proofs = await Promise.all([
    patternAccess(bea, patternId, "editor"),
    patternAccess(vera, patternId, "viewer"),
    patternAccess(sam, other.patternId, "owner"),
  ]);
  for (const proof of [...proofs, { ...own, accountId: bea.accountId }]) {
    await expect(changeRole(proof, vera.accountId, "editor")).rejects.toMatchObject({ code: "not-found" });
    await expect(removePerson(proof, vera.accountId)).rejects.toMatchObject({ code: "not-found" });
  }
  expect(await roles()).toEqual({ Ana: "owner", Bea: "editor", Vera: "viewer" });
});

it("never touches the owner's part", async () => {
  await expect(changeRole(own, owner.accountId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  await expect(removePerson(own, owner.accountId)).rejects.toMatchObject({ code: "not-found" });
  await expect(leavePattern(own)).rejects.toMatchObject({ code: "not-allowed" });
  expect((await roles())["Ana"]).toBe("owner");
});

it("lets a helper leave, and nobody else", async () => {
  await leavePattern(await patternAccess(vera, patternId, "viewer"));
  expect(await roles()).toEqual({ Ana: "owner", Bea: "editor" });
});

it("keeps what a removed helper typed: the draft for everyone, conflicting edits for the helper", async () => {
  const edits = { version: 0, baseNumber: 1 };
  const beas = await patternAccess(bea, patternId, "editor");
  await saveDraft(own, { ...edits, content: widthTyped("100") });
  await saveDraft(beas, { ...edits, content: widthTyped("104") });
  await saveDraft(beas, { version: 1, baseNumber: 1, content: widthTyped("102") });
  expect((await listPeople(own)).map(({ name, hasConflictingDraft }) => [name, hasConflictingDraft])).toEqual([
    ["Ana", false],
    ["Bea", true],
    ["Vera", false],
  ]);
  await removePerson(own, bea.accountId);
  expect(await draftOf(own)).toMatchObject({ content: widthTyped("102"), updatedBy: "Bea" });
  await expect(saveDraft(beas, { version: 2, baseNumber: 1, content: null })).rejects.toMatchObject({
    code: "not-found",
  });
  expect(await conflictingDraftOf(beas)).toBeNull();
  await join("editor", bea);
  expect((await conflictingDraftOf(beas))?.content).toEqual(widthTyped("104"));
});

it("keeps the name on a revision after a helper leaves, and none once the account is deleted", async () => {
  const beas = await patternAccess(bea, patternId, "editor");
  await saveRevision(beas, { document: patternDocument({ name: "Second" }), reason: "renamed", baseNumber: 1 });
  await leavePattern(beas);
  expect((await listRevisions(own)).map(({ createdBy, reason }) => [createdBy, reason])).toEqual([
    ["Bea", "renamed"],
    ["Ana", "first"],
  ]);
  await database().account.delete({ where: { id: bea.accountId } });
  expect((await listRevisions(own)).map(({ createdBy }) => createdBy)).toEqual([null, "Ana"]);
});
