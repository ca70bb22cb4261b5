import { beforeEach, expect, it } from "vitest";
import { patternAccess, type PatternAccess } from "@/features/patterns/access";
import { draftOf, conflictingDraftOf, latestRevision } from "@/features/patterns/data";
import { discardDraft, deleteConflictingDraft, saveDraft } from "@/features/patterns/draft-mutations";
import { createPattern, saveRevision } from "@/features/patterns/mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { patternDocument, widthTyped } from "../factories/pattern";
import { makeViewer } from "./make-account";

let patternId: string;
let ana: PatternAccess;
let bea: PatternAccess;

async function join(role: "editor" | "viewer", name: string): Promise<Viewer> {
  const viewer = await makeViewer(name);
  await database().membership.create({ data: { patternId, accountId: viewer.accountId, role } });
  return viewer;
}

beforeEach(async () => {
  const owner = await makeViewer("Ana");
  ({ patternId } = await createPattern(owner, { document: patternDocument(), reason: "first" }));
  ana = await patternAccess(owner, patternId, "owner");
  bea = await patternAccess(await join("editor", "Bea"), patternId, "editor");
});

const typed = widthTyped("100");
const theirs = widthTyped("102");

it("tells the later of two saves, and keeps both texts", async () => {
  expect(await saveDraft(ana, { content: typed, version: 0, baseNumber: 1 })).toEqual({ status: "saved", version: 1 });
  expect(await saveDraft(bea, { content: theirs, version: 0, baseNumber: 1 })).toEqual({
    status: "late",
    version: 1,
    theirName: "Ana",
  });
  expect((await draftOf(bea))?.content).toEqual(typed);
  expect((await conflictingDraftOf(bea))?.content).toEqual(theirs);
  expect(await conflictingDraftOf(ana)).toBeNull();
  await deleteConflictingDraft(bea);
  expect(await conflictingDraftOf(bea)).toBeNull();
});

it("takes the same text again for the save whose answer was lost, not for somebody else's", async () => {
  await saveDraft(ana, { content: theirs, version: 0, baseNumber: 1 });
  expect(await saveDraft(ana, { content: typed, version: 1, baseNumber: 1 })).toEqual({ status: "saved", version: 2 });
  expect(await saveDraft(ana, { content: typed, version: 1, baseNumber: 1 })).toEqual({ status: "saved", version: 2 });
  expect(await conflictingDraftOf(ana)).toBeNull();
});

it("goes on from a save whose answer was lost, not from somebody else's", async () => {
  const more = widthTyped("104");
  await saveDraft(ana, { content: typed, version: 0, baseNumber: 1 });
  const after = { content: more, version: 0, baseNumber: 1 };
  expect(await saveDraft(ana, { ...after, unanswered: typed })).toEqual({ status: "saved", version: 2 });
  expect((await draftOf(ana))?.content).toEqual(more);
  await saveDraft(bea, { content: theirs, version: 2, baseNumber: 1 });
  const late = { content: typed, version: 2, baseNumber: 1, unanswered: more };
  expect(await saveDraft(ana, late)).toMatchObject({ status: "late", theirName: "Bea" });
  expect((await draftOf(bea))?.content).toEqual(theirs);
});

it("keeps edits that a revision came before", async () => {
  await saveDraft(ana, { content: typed, version: 0, baseNumber: 1 });
  await saveRevision(bea, { document: patternDocument({ name: "Other" }), reason: "renamed", baseNumber: 1 });
  expect((await draftOf(ana))?.content).toEqual(typed);
  expect(await saveDraft(ana, { content: theirs, version: 1, baseNumber: 1 })).toMatchObject({
    status: "late",
    theirName: "Bea",
  });
  // The conflicting edits are on the newest revision: they keep the other's name, and have Ana's number.
  expect((await conflictingDraftOf(ana))?.content?.pattern).toEqual({ ...theirs.pattern, name: "Other" });
  expect(await saveDraft(ana, { content: theirs, version: 1, baseNumber: 2 })).toEqual({ status: "saved", version: 2 });
});

it("keeps a whole pattern with texts as typed, also one that cannot be read", async () => {
  const draft = { ...widthTyped("a few"), solved: ["height.small"], meant: { "grading.height.large": 110 } };
  await saveDraft(ana, { content: draft, version: 0, baseNumber: 1 });
  expect((await draftOf(bea))?.content).toEqual(draft);
});

it("spends the draft with its revision, and no version ever names two drafts", async () => {
  await saveDraft(ana, { content: typed, version: 0, baseNumber: 1 });
  await saveRevision(ana, {
    document: patternDocument({ name: "Second" }),
    reason: "r",
    baseNumber: 1,
    draftVersion: 1,
  });
  expect(await draftOf(ana)).toMatchObject({ content: null, version: 2, baseNumber: 2 });
  expect(await saveDraft(bea, { content: theirs, version: 1, baseNumber: 2 })).toMatchObject({ status: "late" });
  await saveDraft(ana, { content: typed, version: 2, baseNumber: 2 });
  await discardDraft(ana, 3);
  expect(await draftOf(ana)).toMatchObject({ content: null, version: 4 });
  await expect(discardDraft(ana, 3)).rejects.toMatchObject({ code: "changed-meanwhile" });
});

it("saves no revision over a draft that somebody has gone on with, nor over a newer revision", async () => {
  await saveDraft(ana, { content: typed, version: 0, baseNumber: 1 });
  const revision = { document: patternDocument(), reason: "r", baseNumber: 1 };
  for (const draftVersion of [0, 7]) {
    await expect(saveRevision(bea, { ...revision, draftVersion })).rejects.toMatchObject({ code: "changed-meanwhile" });
  }
  expect((await latestRevision(ana)).number).toBe(1);
  await saveRevision(bea, revision);
  await expect(saveRevision(ana, revision)).rejects.toMatchObject({ code: "changed-meanwhile" });
});

it("lets a viewer look and change nothing, and a stranger not even look", async () => {
  const viewer = await join("viewer", "Vera");
  const looking = await patternAccess(viewer, patternId, "viewer");
  expect((await latestRevision(looking)).number).toBe(1);
  await expect(patternAccess(viewer, patternId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
  await expect(saveDraft(looking, { content: typed, version: 0, baseNumber: 1 })).rejects.toMatchObject({
    code: "not-found",
  });
  await expect(
    saveRevision(looking, { document: patternDocument(), reason: "r", baseNumber: 1 }),
  ).rejects.toMatchObject({ code: "changed-meanwhile" });
  const stranger = await makeViewer("Sam");
  await expect(patternAccess(stranger, patternId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  await expect(patternAccess(stranger, "constructor", "viewer")).rejects.toMatchObject({ code: "not-found" });
});
