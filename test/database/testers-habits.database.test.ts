import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import { shownHabits, testerRecord } from "@/engine/gaps";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument, callSnapshot } from "@/features/calls/data";
import { learnedBy } from "@/features/calls/prior-data";
import { latestRevision } from "@/features/patterns/data";
import { analyseCall, nextCallToAnalyse } from "@/features/results/mutations";
import { testerProof, type TesterAccess } from "@/features/testing/home/access";
import { addReports } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import type { RunTask } from "@/server/run-task";
import type { Viewer } from "@/server/viewer";
import { usePrior } from "../../src/features/results/learning/learning-mutations";
import { storeHabitConsent } from "../../src/features/testing/habits/habit-mutations";
import { forgetTester } from "../../src/features/testing/home/forget-mutations";
import { ownRecord } from "../../src/features/testing/home/own-record-data";
import { storedDataOfTester } from "../../src/features/testing/home/stored-data";
import { reader } from "../factories/call";
import { makeCall, WEEK } from "./invited-tester";
import { makeViewer } from "./make-account";

const run: RunTask<EngineTask> = (task) =>
  Promise.resolve(
    runEngineTask(task, () => {
      throw new Error("nothing is solved here");
    }),
  );

let designer: Viewer;
let bea: Viewer;

async function workOff(): Promise<void> {
  for (let next = await nextCallToAnalyse(); next !== null; next = await nextCallToAnalyse())
    await analyseCall(next, run);
}

async function report(access: CallAccess, ...testers: ReturnType<typeof reader>[]): Promise<void> {
  const revision = await latestRevision(access.pattern);
  const reports = testers.map((tester) => ({ tester, typed: {}, idempotencyKey: randomUUID() }));
  await addReports(access, { revision, reports });
}

/** One of the call's testers, as the person with that account. */
async function madeBy({ callId, pattern }: CallAccess, code: string, { accountId }: Viewer): Promise<TesterAccess> {
  const { revisionId } = await latestRevision(pattern);
  const invited = { revisionId, invitedAt: new Date(), invitationExpiresAt: new Date(Date.now() + WEEK) };
  const { id } = await database().tester.update({
    where: { callId_code: { callId, code } },
    data: { accountId, ...invited, acceptedAt: new Date() },
  });
  return await testerProof(id, { accountId, key: "" });
}

/** A test in which Bea, as t1, and two others report. */
async function tested(owner: Viewer, shiftCm: number) {
  const access = await makeCall(owner);
  await report(
    access,
    reader("t1", { bust: 100 + shiftCm, length: 40.5 }),
    reader("t2", { bust: 101 + shiftCm, length: 39 }),
    reader("t3", { bust: 120 + shiftCm, length: 44.5 }, { size: "large" }),
  );
  return { access, bea: await madeBy(access, "t1", bea) };
}

async function recordsOf(access: CallAccess) {
  return (await callSnapshot(access)).document.records;
}

beforeEach(async () => {
  designer = await makeViewer("Ana");
  bea = await makeViewer("Bea");
});

describe("what a tester's earlier tests show of them", { timeout: 60_000 }, () => {
  it("is kept with their first report in a later one where they allow it, and changes with nothing that comes later", async () => {
    const earlier = await tested(designer, 2);
    await storeHabitConsent(earlier.bea, true);
    const document = await callDocument(earlier.access);
    const later = await tested(designer, 0);
    await workOff();
    const shown = shownHabits(document, new Set(["t1"])).get("t1");
    if (shown === undefined) throw new Error("Bea reported");
    const records = { t1: testerRecord([shown]) };
    expect(await recordsOf(later.access)).toEqual(records);
    expect(await learnedBy(later.access)).toMatchObject({ knownTesters: 1 });
    expect((await callDocument(later.access)).format).toBe("sizewright/call@2");
    const { version } = await callSnapshot(later.access);
    await report(earlier.access, reader("t9", { bust: 90 }));
    await workOff();
    expect(await recordsOf(later.access)).toEqual(records);
    expect((await callSnapshot(later.access)).version).toBe(version);
    expect(await storedDataOfTester(later.bea)).toMatchObject({ hasRecord: true });
    expect(await storedDataOfTester(earlier.bea)).toMatchObject({ habits: { isAllowed: true, usedIn: 1 } });
    expect(await ownRecord(later.bea)).toMatchObject({ shownByEarlierTests: [{ test: "Test", shown }] });
  });

  it("is not kept where they have not allowed it, allow it later, or are somebody else", async () => {
    const earlier = await tested(designer, 2);
    const other = await madeBy(earlier.access, "t2", await makeViewer("Cleo"));
    await storeHabitConsent(other, true);
    const later = await tested(designer, 0);
    await workOff();
    expect(await recordsOf(later.access)).toBeUndefined();
    await storeHabitConsent(earlier.bea, true);
    await report(later.access, reader("t9", { bust: 99 }));
    await workOff();
    expect(await recordsOf(later.access)).toBeUndefined();
    expect(await database().testerHabit.count({ where: { tester: { callId: later.access.callId } } })).toBe(0);
  });

  it("comes from tests of the same designer alone", async () => {
    const stranger = await makeViewer("Sam");
    const theirs = await tested(stranger, 2);
    await storeHabitConsent(theirs.bea, true);
    const later = await tested(designer, 0);
    await workOff();
    expect(await recordsOf(later.access)).toBeUndefined();
  });

  it("goes when they take it back, and the later test is calculated again without", async () => {
    const earlier = await tested(designer, 2);
    await storeHabitConsent(earlier.bea, true);
    const later = await tested(designer, 0);
    await workOff();
    const { version } = await callSnapshot(later.access);
    await storeHabitConsent(earlier.bea, false);
    const after = await callSnapshot(later.access);
    expect([after.document.records, after.version]).toEqual([undefined, version + 1]);
    expect(await nextCallToAnalyse()).toBe(later.access.callId);
    expect(await storedDataOfTester(earlier.bea)).toMatchObject({ habits: { isAllowed: false, usedIn: 0 } });
  });

  it.each(["earlier", "later"] as const)("goes with the deletion of their data in the %s test", async (which) => {
    const earlier = await tested(designer, 2);
    await storeHabitConsent(earlier.bea, true);
    const later = await tested(designer, 0);
    await workOff();
    expect(await database().testerHabit.count({ where: { testerId: later.bea.testerId } })).toBe(1);
    await forgetTester(which === "earlier" ? earlier.bea : later.bea);
    await workOff();
    expect(await recordsOf(later.access)).toBeUndefined();
    expect(await database().testerHabit.count({ where: { testerId: later.bea.testerId } })).toBe(0);
    const { habitsSince } = await database().tester.findUniqueOrThrow({ where: { id: earlier.bea.testerId } });
    expect(habitsSince === null).toBe(which === "earlier");
  });

  it("goes with the earlier test itself", async () => {
    const earlier = await tested(designer, 2);
    await storeHabitConsent(earlier.bea, true);
    const later = await tested(designer, 0);
    await workOff();
    const { version } = await callSnapshot(later.access);
    await database().pattern.delete({ where: { id: earlier.access.pattern.patternId } });
    const after = await callSnapshot(later.access);
    expect([after.document.records, after.version]).toEqual([undefined, version + 1]);
  });

  it("is switched off with what else earlier tests showed", async () => {
    const earlier = await tested(designer, 2);
    await storeHabitConsent(earlier.bea, true);
    const later = await tested(designer, 0);
    await workOff();
    await usePrior(later.access, false);
    expect(await recordsOf(later.access)).toBeUndefined();
    await usePrior(later.access, true);
    expect(await recordsOf(later.access)).toHaveProperty("t1");
  });

  it("can be allowed by nobody but the tester, and only with an account", async () => {
    const earlier = await tested(designer, 2);
    const { testerId } = earlier.bea;
    await expect(testerProof(testerId, { accountId: designer.accountId, key: "" })).rejects.toMatchObject({
      code: "not-found",
    });
    await expect(storeHabitConsent({ ...earlier.bea, accountId: designer.accountId }, true)).rejects.toMatchObject({
      code: "not-found",
    });
    await database().tester.update({ where: { id: testerId }, data: { accountId: null } });
    await expect(storeHabitConsent({ ...earlier.bea, accountId: null }, true)).rejects.toMatchObject({
      code: "not-found",
    });
    const access = await callAccess(designer, earlier.access.callId, "owner");
    expect((await callDocument(access)).records).toBeUndefined();
  });
});
