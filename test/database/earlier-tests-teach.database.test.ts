import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import { learnFromCalls } from "@/engine/gaps";
import { parseCall, type CallPrior } from "@/engine/pattern";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument, callSnapshot } from "@/features/calls/data";
import { learnedBy } from "@/features/calls/prior-data";
import { latestRevision } from "@/features/patterns/data";
import { saveRevision } from "@/features/patterns/mutations";
import { analyseCall, nextCallToAnalyse } from "@/features/results/mutations";
import { addReports } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { RunTask } from "@/server/run-task";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { usePrior } from "../../src/features/results/learning/learning-mutations";
import { unsafeTestersToForget } from "../../src/features/testing/forget/access";
import { forgetTesterIn } from "../../src/features/testing/forget/forget-in-mutations";
import { startNextCall } from "../../src/features/testing/again/again-mutations";
import { storeCall } from "../../src/features/testing/report/document-mutations";
import { reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeCall } from "./invited-tester";
import { makeViewer } from "./make-account";

const run: RunTask<EngineTask> = (task) =>
  Promise.resolve(
    runEngineTask(task, () => {
      throw new Error("nothing is solved here");
    }),
  );

let designer: Viewer;

async function report(access: CallAccess, ...testers: ReturnType<typeof reader>[]): Promise<void> {
  const revision = await latestRevision(access.pattern);
  const reports = testers.map((tester) => ({ tester, typed: {}, idempotencyKey: randomUUID() }));
  await addReports(access, { revision, reports });
}

/** A test with reports that lie about a shift in the bust. */
async function reported(owner: Viewer, shiftCm: number): Promise<CallAccess> {
  const access = await makeCall(owner);
  await report(
    access,
    reader("t1", { bust: 100 + shiftCm, length: 40.5 }),
    reader("t2", { bust: 101 + shiftCm, length: 39 }),
    reader("t3", { bust: 120 + shiftCm, length: 44.5 }, { size: "large" }),
  );
  return access;
}

async function workOff(): Promise<void> {
  for (let next = await nextCallToAnalyse(); next !== null; next = await nextCallToAnalyse())
    await analyseCall(next, run);
}

async function priorOf(access: CallAccess): Promise<CallPrior | null> {
  return (await learnedBy(access)).prior;
}

beforeEach(async () => {
  designer = await makeViewer("Ana");
});

describe("what earlier tests teach", { timeout: 60_000 }, () => {
  it("is kept with the first report, and changes with nothing that comes later", async () => {
    const earlier = [await reported(designer, 2), await reported(designer, -3)];
    const documents = await Promise.all(earlier.map(callDocument));
    const later = await makeCall(designer);
    await workOff();
    expect(await learnedBy(later)).toMatchObject({ prior: null, isFrozen: false });
    await report(later, reader("t1", { bust: 103 }));
    await workOff();
    const prior = await priorOf(later);
    // The first revision of each alone, as their exported files have it.
    expect(prior).toEqual(learnFromCalls(documents));
    expect(prior?.calls).toBe(2);
    await reported(designer, 1);
    await report(later, reader("t2", { bust: 99 }));
    await workOff();
    expect(await learnedBy(later)).toEqual({ prior, isUsed: true, knownTesters: 0, isFrozen: true });
    expect((await callSnapshot(later)).document.prior).toEqual(prior);
    await expect(
      database().call.update({ where: { id: later.callId }, data: { priorAt: new Date() } }),
    ).rejects.toThrow();
  });

  it("comes from the designer's own tests of other patterns alone, and none is made up", async () => {
    const stranger = await makeViewer("Sam");
    const theirs = await reported(stranger, 2);
    const { patternId } = theirs.pattern;
    await database().membership.create({ data: { patternId, accountId: designer.accountId, role: "editor" } });
    const demo = await reported(designer, 2);
    await database().pattern.update({ where: { id: demo.pattern.patternId }, data: { isDemo: true } });
    const first = await reported(designer, 1);
    await workOff();
    expect(await learnedBy(first)).toEqual({ prior: null, isUsed: true, knownTesters: 0, isFrozen: true });
    expect(await callDocument(first)).not.toHaveProperty("prior");
    // A second test of the same pattern: the pattern's errors are the same ones.
    const { callId } = await startNextCall(first, { title: "Again", typed: {}, idempotencyKey: randomUUID() });
    const second = await callAccess(designer, callId, "owner");
    await report(second, reader("t9", { bust: 104 }));
    await workOff();
    expect(await priorOf(second)).toBeNull();
    expect(await priorOf(theirs)).toBeNull();
  });

  it("is of the first revision that was tested, and of no report of a corrected one", async () => {
    const earlier = await reported(designer, 2);
    const before = await callDocument(earlier);
    const document = patternDocument({
      grading: { width: { small: 90, large: 112 }, height: { small: 100, large: 110 } },
    });
    await saveRevision(earlier.pattern, { document, reason: "Narrower", baseNumber: 1 });
    await report(earlier, reader("t4", { bust: 92 }));
    const later = await reported(designer, 0);
    await workOff();
    expect(await priorOf(later)).toEqual(learnFromCalls([before]));
  });

  it("stays when an earlier test is deleted, and when one of its testers is", async () => {
    const [one, other] = [await reported(designer, 2), await reported(designer, -3)];
    const later = await reported(designer, 0);
    await workOff();
    const prior = await priorOf(later);
    expect(prior?.calls).toBe(2);
    await inTransaction(async (transaction) => {
      const [whose] = await unsafeTestersToForget(transaction, { callId: one.callId });
      if (whose === undefined) throw new Error("there are three testers");
      await forgetTesterIn(transaction, whose);
    });
    await database().pattern.delete({ where: { id: other.pattern.patternId } });
    await workOff();
    expect(await priorOf(later)).toEqual(prior);
  });

  it("is switched off and on again by one setting, after which the test is calculated anew", async () => {
    await reported(designer, 2);
    const later = await reported(designer, 0);
    await workOff();
    const [prior, { version }] = [await priorOf(later), await callSnapshot(later)];
    await usePrior(later, false);
    const off = await callSnapshot(later);
    expect([off.version, off.document.prior]).toEqual([version + 1, undefined]);
    expect(await nextCallToAnalyse()).toBe(later.callId);
    await usePrior(later, true);
    expect((await callSnapshot(later)).document.prior).toEqual(prior);
  });

  it("lets nobody else switch it", async () => {
    const later = await reported(designer, 0);
    const stranger = await makeViewer("Sam");
    await expect(callAccess(stranger, later.callId, "editor")).rejects.toMatchObject({ code: "not-found" });
    const { patternId } = later.pattern;
    await database().membership.create({ data: { patternId, accountId: stranger.accountId, role: "viewer" } });
    const viewing = await callAccess(stranger, later.callId, "viewer");
    await expect(usePrior(viewing, false)).rejects.toBeInstanceOf(AppError);
    expect(await learnedBy(later)).toMatchObject({ isUsed: true });
  });

  it("is exported with the test, and kept when that is brought in, as is that there is none", async () => {
    await reported(designer, 2);
    const later = await reported(designer, 0);
    await workOff();
    const exported = await callDocument(later);
    expect(exported.format).toBe("sizewright/call@2");
    const parsed = parseCall(JSON.parse(JSON.stringify(exported)));
    if (!parsed.ok) throw new Error("what is exported can be read");
    const stranger = await makeViewer("Sam");
    const { callId } = await storeCall(stranger, { call: parsed.document, title: "Brought in" });
    await workOff();
    const broughtIn = await callAccess(stranger, callId, "owner");
    expect(await learnedBy(broughtIn)).toEqual(await learnedBy(later));
    const { prior: _prior, ...without } = parsed.document;
    const again = await storeCall(designer, { call: without, title: "Brought in without" });
    await workOff();
    const broughtInWithout = await callAccess(designer, again.callId, "owner");
    expect(await learnedBy(broughtInWithout)).toEqual({ prior: null, isUsed: true, knownTesters: 0, isFrozen: true });
  });
});
