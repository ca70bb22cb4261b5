import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { nextGradingPurge, purgeGradings } from "@/features/patterns/grading/purge-mutations";
import { retentionSteps, retentionsOfViewer } from "@/features/testing/retention/retention-data";
import { nextRetention, runRetention } from "@/features/testing/retention/retention-mutations";
import { database } from "@/server/database";
import { reader } from "../factories/call";
import { makeTester } from "./make-tester";
import { makePublishedCall, type PublishedCallMade } from "./published-call";

process.env.SMTP_URL = "smtp://127.0.0.1:1";
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const DAY_MS = 24 * 60 * 60_000;
const CLOSED = new Date("2027-01-15T12:00:00Z");
const after = (days: number) => new Date(CLOSED.getTime() + days * DAY_MS);
let made: PublishedCallMade;
let testerId: string;

/** Closed in January 2027; its notice says 12 months. */
beforeEach(async () => {
  await database().call.deleteMany();
  made = await makePublishedCall();
  const { callId } = made;
  const revision = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  ({ testerId } = await makeTester({ designer: made.owner, call: made.access, revisionId: revision.id }));
  await database().testerContact.create({ data: { testerId, name: "Bea", email: "bea@example.org" } });
  const { id: _id, ...document } = reader("x", { bust: 101 });
  await database().report.create({
    data: { testerId, version: 1, revisionId: revision.id, document, idempotencyKey: randomUUID() },
  });
  await database().application.create({
    data: {
      ...{ callId, position: 0, document: {}, agreementVersion: 1, agreedAt: new Date(), idempotencyKey: randomUUID() },
      contact: { create: { callId, name: "Cleo", email: "cleo@example.org" } },
    },
  });
  await database().call.update({ where: { id: callId }, data: { status: "closed", closedAt: CLOSED } });
});

it("tells the designer 30 days before, and deletes people only then, once", async () => {
  const { callId, access } = made;
  expect(await nextRetention(after(334))).toBeNull();
  // 15 January 2028 is 365 days after.
  expect(await nextRetention(after(335))).toBe(callId);
  expect(await retentionSteps(access)).toEqual([]);
  await runRetention(callId, after(335));
  expect(await database().message.count({ where: { callId, kind: "deletion-soon", address: made.owner.email } })).toBe(
    1,
  );
  expect((await retentionSteps(access))[0]?.message).toContain("deleted on Saturday 15 January 2028");
  expect(await retentionsOfViewer(made.owner)).toMatchObject([{ callId }]);
  expect(await nextRetention(after(364))).toBeNull();
  expect(await nextRetention(after(365))).toBe(callId);
  await runRetention(callId, after(365));
  expect(await database().testerContact.count()).toBe(0);
  expect(await database().application.count({ where: { callId } })).toBe(0);
  expect(await database().report.count({ where: { testerId } })).toBe(1);
  expect(await nextRetention(after(1_000))).toBeNull();
  expect(await retentionSteps(access)).toEqual([]);
});

it("waits 30 days where the designer was told late, and for a call that is opened again", async () => {
  const { callId } = made;
  await runRetention(callId, after(400));
  expect(await nextRetention(after(429))).toBeNull();
  expect(await nextRetention(after(430))).toBe(callId);
  await database().call.update({ where: { id: callId }, data: { status: "open", closedAt: null } });
  expect(await nextRetention(after(430))).toBeNull();
  await database().call.update({ where: { id: callId }, data: { status: "closed", closedAt: after(440) } });
  expect(await nextRetention(after(700))).toBeNull();
  expect(await database().testerContact.count({ where: { testerId } })).toBe(1);
});

it("deletes nothing of a call whose notice says nothing", async () => {
  await database().$executeRaw`UPDATE listing SET document = document - 'notice' WHERE call_id = ${made.callId}::uuid`;
  expect(await nextRetention(after(5_000))).toBeNull();
});

it("deletes what was asked of the engine a week ago, and not what still waits", async () => {
  const { patternId } = made;
  const row = { patternId, request: {}, createdAt: new Date(Date.now() - 8 * DAY_MS) };
  await database().grading.createMany({
    data: [
      { ...row, status: "done", output: "{}", idempotencyKey: randomUUID() },
      { ...row, status: "waiting", idempotencyKey: randomUUID() },
    ],
  });
  expect(await nextGradingPurge()).not.toBeNull();
  await purgeGradings();
  expect(await database().grading.findMany({ where: { patternId } })).toMatchObject([{ status: "waiting" }]);
});
