import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { analyseCall as computeResults, testerResultsSchema } from "@/engine/results";
import { analysisProgress, storedResults, storedTesters } from "@/features/results/data";
import { analyseCall, nextCallToAnalyse } from "@/features/results/mutations";
import { PAGE_PARTS } from "@/features/results/schema";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument, currentCall } from "@/features/calls/data";
import { createCall } from "@/features/calls/mutations";
import { patternAccess } from "@/features/patterns/access";
import { createPattern, saveRevision } from "@/features/patterns/mutations";
import { addReports, decide } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import type { RunTask } from "@/server/run-task";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { reader } from "../factories/call";
import { patternDocument, swatch } from "../factories/pattern";
import { makeViewer } from "./make-account";

/** The engine in this thread; what is asked here needs no solver. */
const run: RunTask<EngineTask> = (task) =>
  Promise.resolve(
    runEngineTask(task, () => {
      throw new Error("nothing is solved here");
    }),
  );
const never: RunTask<EngineTask> = () => Promise.reject(new Error("run for nothing"));

const document = patternDocument();
let access: CallAccess;
let revisionId: string;
let looker: Viewer;
let stranger: Viewer;

async function report(tester: ReturnType<typeof reader>): Promise<void> {
  const reports = [{ tester, typed: {}, idempotencyKey: randomUUID() }];
  await addReports(access, { revision: { revisionId, document }, reports });
}

async function stored() {
  const { version } = await currentCall(access);
  return await storedResults(access, version, PAGE_PARTS.gaps);
}

/** Works off every call that waits, as the worker does. */
async function workOff(task: RunTask<EngineTask> = run): Promise<string[]> {
  const done = [];
  for (let next = await nextCallToAnalyse(); next !== null; next = await nextCallToAnalyse()) {
    await analyseCall(next, task);
    done.push(next);
  }
  return done;
}

beforeAll(async () => {
  const designer = await makeViewer();
  [looker, stranger] = [await makeViewer(), await makeViewer()];
  const made = await createPattern(designer, { document, reason: "First" });
  revisionId = made.revisionId;
  await database().membership.create({
    data: { patternId: made.patternId, accountId: looker.accountId, role: "viewer" },
  });
  const places = { small: { least: 1, wanted: 2 }, large: { least: 1, wanted: 2 } };
  const pattern = await patternAccess(designer, made.patternId, "editor");
  const { callId } = await inTransaction((connection) => createCall(pattern, { title: "A call", places }, connection));
  access = await callAccess(designer, callId, "editor");
  await report(reader("t1", { bust: 103, length: 41 }));
  await report(reader("t2", { bust: 102, length: 40 }));
  await report(reader("t3", { bust: 123 }, { size: "large" }));
});

describe("a call's results", { timeout: 60_000 }, () => {
  it("are updating until the worker has computed them, and reading computes nothing", async () => {
    expect(await stored()).toEqual({ progress: { status: "updating" }, analysis: null });
    expect(await database().analysis.count({ where: { callId: access.callId } })).toBe(0);
  });

  it("are what the engine computes, each tester's part in a row of its own", async () => {
    expect(await workOff()).toEqual([access.callId]);
    const expected = JSON.parse(JSON.stringify(computeResults(await callDocument(access)))) as ReturnType<
      typeof computeResults
    >;
    const { progress, analysis } = await stored();
    expect(progress).toEqual({ status: "current" });
    expect(analysis?.parts.differences).toEqual(expected.differences);
    const analysisId = analysis?.analysisId ?? "";
    const testers = await storedTesters(access, { analysisId }, testerResultsSchema);
    expect(testers).toEqual(expected.testers.map((tester) => ({ ...tester, name: tester.tester })));
    const paged = await storedTesters(access, { analysisId, skip: 1, take: 1 }, testerResultsSchema);
    expect(paged.map(({ tester }) => tester)).toEqual(["t2"]);
    const large = await storedTesters(access, { analysisId, size: "large" }, testerResultsSchema);
    expect(large.map(({ tester }) => tester)).toEqual(["t3"]);
  });

  it("are not computed again while nothing has changed", async () => {
    expect(await workOff(never)).toEqual([]);
  });

  it("show what was known before while they are updating, and hold nothing of older versions afterwards", async () => {
    await decide(access, { tester: "t1", part: "readings", position: 0, decision: "set-aside" });
    const before = await stored();
    expect(before.progress).toEqual({ status: "updating" });
    expect(before.analysis?.parts.differences.cells[0]?.reports).toBe(2);
    await workOff();
    const after = await stored();
    expect(after.progress).toEqual({ status: "current" });
    expect(after.analysis?.parts.differences.cells[0]?.reports).toBe(1);
    expect(await database().analysis.count({ where: { callId: access.callId } })).toBe(1);
  });

  it("are computed again for a revision of the pattern, and say of which revision they are", async () => {
    await saveRevision(access.pattern, { document: { ...document, name: "Renamed" }, reason: "Name", baseNumber: 1 });
    expect((await stored()).progress).toEqual({ status: "updating" });
    expect((await stored()).analysis?.revisionId).toBe(revisionId);
    await workOff();
    expect((await stored()).analysis?.revisionId).not.toBe(revisionId);
  });

  it("leave out by name a report that cannot be computed with, and are there for the rest", async () => {
    // As it could come in before entry was checked.
    const { tester } = { tester: reader("t4", { bust: 101 }) };
    await report({ ...tester, swatches: [swatch()] });
    const row = await database().report.findFirstOrThrow({
      where: { tester: { code: "t4", callId: access.callId } },
      select: { id: true, testerId: true, document: true },
    });
    const faulty = JSON.parse(JSON.stringify(row.document).replace('"stitches":20', '"stitches":1e-101')) as object;
    await database().report.delete({ where: { id: row.id } });
    await database().report.create({
      data: { testerId: row.testerId, version: 1, revisionId, document: faulty, idempotencyKey: randomUUID() },
    });
    await workOff();
    const { progress, analysis } = await stored();
    expect(progress).toEqual({ status: "current" });
    expect(analysis?.leftOut).toMatchObject([{ tester: "t4" }]);
    expect(analysis?.parts.differences.testersBySize).toEqual([2, 1]);
    await database().tester.delete({ where: { id: row.testerId } });
  });

  it("say where computing was stopped or failed, keep what was known, and are not tried again for the same version", async () => {
    await decide(access, { tester: "t1", part: "readings", position: 0, decision: null });
    await workOff(() => Promise.resolve(null));
    expect(await stored()).toMatchObject({ progress: { status: "stopped" }, analysis: { parts: {} } });
    expect(await workOff(never)).toEqual([]);
    await decide(access, { tester: "t1", part: "readings", position: 0, decision: "keep" });
    await workOff(() => Promise.reject(new Error("on purpose")));
    expect(await stored()).toMatchObject({ progress: { status: "failed" }, analysis: { parts: {} } });
    expect(await workOff(never)).toEqual([]);
    await decide(access, { tester: "t1", part: "readings", position: 0, decision: null });
    await workOff();
    expect((await stored()).progress).toEqual({ status: "current" });
    expect(await database().analysis.count({ where: { callId: access.callId } })).toBe(1);
  });

  it("of another version of the engine are shown as updating, and computed again after what people changed", async () => {
    await database().analysis.updateMany({ where: { callId: access.callId }, data: { engineVersion: "0" } });
    const { progress, analysis } = await stored();
    expect([progress.status, analysis === null]).toEqual(["updating", false]);
    expect(await nextCallToAnalyse()).toBe(access.callId);
    await workOff();
    const [row] = await database().analysis.findMany({ where: { callId: access.callId } });
    expect(row?.engineVersion).toBe(ENGINE_VERSION);
  });

  it("of a version that was overtaken while it was computed are not stored", async () => {
    await decide(access, { tester: "t2", part: "readings", position: 0, decision: "keep" });
    let computed = 0;
    const overtaking: RunTask<EngineTask> = async (task, signal) => {
      computed += 1;
      if (computed === 1) await decide(access, { tester: "t2", part: "readings", position: 0, decision: null });
      return await run(task, signal);
    };
    expect(await workOff(overtaking)).toEqual([access.callId, access.callId]);
    const { version } = await currentCall(access);
    const rows = await database().analysis.findMany({ where: { callId: access.callId } });
    expect(rows.map(({ callVersion }) => callVersion)).toEqual([version]);
  });

  it("are somebody else's business only through their own part in the call", async () => {
    await expect(callAccess(stranger, access.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
    await expect(callAccess(looker, access.callId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
    const forged = { ...access, pattern: { ...access.pattern, accountId: stranger.accountId } };
    const { version } = await currentCall(access);
    const { analysis } = await stored();
    expect((await storedResults(forged, version, PAGE_PARTS.gaps)).analysis).toBeNull();
    expect(await analysisProgress(forged, version)).toEqual({ status: "updating" });
    const analysisId = analysis?.analysisId ?? "";
    expect(await storedTesters(forged, { analysisId }, testerResultsSchema)).toEqual([]);
  });
});
