import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { patternAccess, type HelperRole } from "@/features/patterns/access";
import { latestRevision, listPatterns } from "@/features/patterns/data";
import { saveDraft } from "@/features/patterns/draft-mutations";
import { patternMarks } from "../../src/features/patterns/pattern-marks-data";
import { archivedPatterns } from "../../src/features/patterns/owner/archived-data";
import { archivePattern, bringBackPattern, duplicatePattern } from "../../src/features/patterns/owner/owner-mutations";
import { patternDeletion } from "../../src/features/testing/pattern-deletion/pattern-deletion-data";
import { deletePattern } from "../../src/features/testing/pattern-deletion/pattern-deletion-mutations";
import { closeCall, reopenCall } from "../../src/features/testing/progress/progress-mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { widthTyped } from "../factories/pattern";
import { makeCall } from "./invited-tester";
import { makeViewer } from "./make-account";
import { makeTester } from "./make-tester";

let owner: Viewer;
let call: CallAccess;

beforeEach(async () => {
  owner = await makeViewer("Ana");
  call = await makeCall(owner);
});

async function helper(role: HelperRole) {
  const viewer = await makeViewer("Bea");
  const { patternId } = call.pattern;
  await database().membership.create({ data: { patternId, accountId: viewer.accountId, role } });
  return { viewer, access: await patternAccess(viewer, patternId, role) };
}

const newTest = () =>
  inTransaction((connection) => createCall(call.pattern, { title: "Another", places: {} }, connection));
const isThere = () => database().pattern.count({ where: { id: call.pattern.patternId } });

it("leaves the lists of the owner and of helpers, and comes back to them", async () => {
  const { viewer } = await helper("editor");
  await closeCall(call);
  await archivePattern(call.pattern);
  for (const whose of [owner, viewer]) {
    expect(await listPatterns(whose)).toEqual([]);
    expect(await archivedPatterns(whose)).toMatchObject([{ patternId: call.pattern.patternId, tests: 1 }]);
  }
  expect((await patternMarks(call.pattern)).archivedAt).not.toBeNull();
  expect((await latestRevision(call.pattern)).number).toBe(1);
  expect(await archivedPatterns(await makeViewer("Someone else"))).toEqual([]);

  await bringBackPattern(call.pattern);
  await expect(bringBackPattern(call.pattern)).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect(await listPatterns(owner)).toHaveLength(1);
  expect(await archivedPatterns(owner)).toEqual([]);
});

it("is not archived while a test of it is open, and no test opens while it is archived", async () => {
  await expect(archivePattern(call.pattern)).rejects.toThrow("Close the test first.");
  await closeCall(call);
  await archivePattern(call.pattern);
  await expect(newTest()).rejects.toThrow("This pattern is archived.");
  await expect(reopenCall(call)).rejects.toThrow("This pattern is archived.");
  await bringBackPattern(call.pattern);
  await reopenCall(call);
  await newTest();
});

it("is copied once for one sending, as it was last saved and without its tests", async () => {
  const draft = { content: widthTyped("99"), version: 0, baseNumber: 1 };
  await saveDraft(call.pattern, draft);
  const key = randomUUID();
  const { patternId } = await duplicatePattern(owner, call.pattern, key);
  expect((await duplicatePattern(owner, call.pattern, key)).patternId).toBe(patternId);
  expect(patternId).not.toBe(call.pattern.patternId);
  const [first, copy] = [
    await latestRevision(call.pattern),
    await latestRevision(await patternAccess(owner, patternId, "owner")),
  ];
  expect(copy.document).toEqual({ ...first.document, name: `${first.document.name} (copy)` });
  expect(copy).toMatchObject({ number: 1, reason: `Copied from “${first.document.name}”, revision 1` });
  const listed = await listPatterns(owner);
  expect(listed.find((pattern) => pattern.patternId === patternId)).toMatchObject({ calls: [], role: "owner" });
  expect(listed).toHaveLength(2);
});

it("is neither archived, brought back nor deleted by helpers", async () => {
  await closeCall(call);
  for (const role of ["editor", "viewer"] as const) {
    const { access } = await helper(role);
    await expect(archivePattern(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await expect(patternDeletion(access)).rejects.toMatchObject({ code: "not-found" });
    await expect(deletePattern(access)).rejects.toMatchObject({ code: "not-found" });
  }
  await archivePattern(call.pattern);
  await expect(bringBackPattern((await helper("editor")).access)).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect(await isThere()).toBe(1);
});

it("is not deleted while a tester is at work; then it goes with its tests, and its copy stays", async () => {
  const { id: revisionId } = await database().revision.findFirstOrThrow({
    where: { patternId: call.pattern.patternId },
  });
  const { testerId } = await makeTester({ designer: owner, call, revisionId });
  await expect(deletePattern(call.pattern)).rejects.toThrow(
    "“Test” is running, with 1 tester who is not finished. Their work would be lost.",
  );
  expect(await patternDeletion(call.pattern)).toMatchObject({
    pattern: { tests: 1, testers: 1, helpers: 0 },
    running: [{ title: "Test", unfinished: 1 }],
  });
  const copy = await duplicatePattern(owner, call.pattern, randomUUID());
  await closeCall(call);
  await deletePattern(call.pattern);
  expect(await isThere()).toBe(0);
  expect(await database().tester.count({ where: { id: testerId } })).toBe(0);
  await expect(callAccess(owner, call.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  await expect(deletePattern(call.pattern)).rejects.toMatchObject({ code: "not-found" });
  expect(await database().pattern.count({ where: { id: copy.patternId } })).toBe(1);
});
