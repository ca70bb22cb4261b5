import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { accountDeletion } from "@/features/testing/account-data/deletion-data";
import { deleteAccount } from "@/features/testing/account-data/delete-account-mutations";
import { database } from "@/server/database";
import { reader } from "../factories/call";
import { makeTester } from "./make-tester";
import { makeViewer } from "./make-account";
import { joinCall, makePublishedCall, type PublishedCallMade } from "./published-call";

async function testerOf(made: PublishedCallMade, accountId: string | null = null) {
  const revision = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  const { testerId } = await makeTester({ designer: made.owner, call: made.access, revisionId: revision.id });
  await database().tester.update({ where: { id: testerId }, data: { accountId } });
  return { testerId, revisionId: revision.id };
}

function isThere(accountId: string): Promise<number> {
  return database().account.count({ where: { id: accountId } });
}

it("is refused in words while testers of theirs are at work, and then nothing is deleted", async () => {
  const made = await makePublishedCall();
  const { testerId } = await testerOf(made);
  await expect(deleteAccount(made.owner)).rejects.toThrow(
    "“Invented call” is running, with 1 tester who is not finished.",
  );
  expect(await database().tester.count({ where: { id: testerId } })).toBe(1);
  expect(await isThere(made.owner.accountId)).toBe(1);
});

it("takes a designer's patterns, tests and testers once nobody is at work, and says so before", async () => {
  const made = await makePublishedCall();
  const { testerId } = await testerOf(made);
  const helper = await joinCall(made, "editor");
  await database().tester.update({ where: { id: testerId }, data: { stoppedAt: new Date() } });
  expect(await accountDeletion(made.owner.accountId)).toMatchObject({
    patterns: [{ tests: 1, testers: 1, helpers: 1 }],
    running: [],
  });
  await deleteAccount(made.owner);
  expect(await isThere(made.owner.accountId)).toBe(0);
  expect(await database().tester.count({ where: { id: testerId } })).toBe(0);
  expect(await database().pattern.count({ where: { id: made.patternId } })).toBe(0);
  expect(await isThere(helper.viewer.accountId)).toBe(1);
});

it("leaves the numbers of a report to the designer whose test it was, without a name, and nothing of another test", async () => {
  const [made, second] = [await makePublishedCall(), await makePublishedCall()];
  const bea = await makeViewer("Bea");
  const { testerId, revisionId } = await testerOf(made, bea.accountId);
  const { testerId: withoutReport } = await testerOf(second, bea.accountId);
  await database().testerContact.create({ data: { testerId, name: "Bea", email: "bea@example.org" } });
  const { id: _id, ...document } = reader("x", { bust: 101 });
  await database().report.create({
    data: { testerId, version: 1, revisionId, document, idempotencyKey: randomUUID() },
  });
  const applied = await database().application.create({
    data: {
      ...{ callId: second.callId, position: 0, accountId: bea.accountId, document: {}, agreementVersion: 1 },
      ...{ agreedAt: new Date(), idempotencyKey: randomUUID() },
    },
  });
  await deleteAccount(bea);
  expect(await isThere(bea.accountId)).toBe(0);
  expect(await database().tester.findUnique({ where: { id: testerId }, include: { contact: true } })).toMatchObject({
    accountId: null,
    contact: null,
  });
  expect(await database().report.count({ where: { testerId } })).toBe(1);
  expect(await database().tester.count({ where: { id: withoutReport } })).toBe(0);
  expect(await database().application.count({ where: { id: applied.id } })).toBe(0);
});
