import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { storedResults } from "@/features/results/data";
import { analyseCall } from "@/features/results/mutations";
import { revisionEvidence, storedPlan } from "../../src/features/results/changes/plan-data";
import { requestPlan, runPlan, savePlan } from "../../src/features/results/changes/plan-mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument, currentCall } from "@/features/calls/data";
import { PAGE_PARTS } from "@/features/results/schema";
import { openInstructionFixes } from "@/features/patterns/follow-up/instruction-fix-data";
import { correctedSizeStandings } from "@/features/patterns/follow-up/retest-data";
import { latestRevision } from "@/features/patterns/data";
import { saveRevision } from "@/features/patterns/mutations";
import { publishedCorrections } from "@/features/testing/corrections/correction-data";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import { storeCall } from "@/features/testing/report/document-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { engineThread, type EngineThread } from "@/worker/engine-thread";
import { saltmarshCall } from "../../prisma/demo/saltmarsh-call";
import { makeViewer } from "./make-account";

const { call } = saltmarshCall();
const NECK_BAND = { kind: "allowance", id: "neck-band", by: "input" } as const;
const BODY = { kind: "count", id: "body", size: "size-2x", by: "input" } as const;

let engine: EngineThread;
let designer: Viewer;
let looker: Viewer;
let stranger: Viewer;
let access: CallAccess;

/** A plan of these proposals that the worker has worked out. */
async function workedOut(take: readonly (typeof NECK_BAND | typeof BODY)[]): Promise<string> {
  const { number: baseNumber } = await latestRevision(access.pattern);
  const request = { kind: "proposals", take: [...take] } as const;
  const { planId } = await requestPlan(access, { request, baseNumber, idempotencyKey: randomUUID() });
  await runPlan(planId, engine.run);
  return planId;
}

/** What is known of the call as it stands now. */
async function differences() {
  const { version } = await currentCall(access);
  const { progress, analysis } = await storedResults(access, version, PAGE_PARTS.gaps);
  if (progress.status !== "current" || analysis === null) throw new Error("the call was not analysed");
  return analysis.parts.differences;
}

function as(viewer: Viewer): CallAccess {
  return { ...access, pattern: { ...access.pattern, accountId: viewer.accountId } };
}

beforeAll(async () => {
  engine = engineThread();
  [designer, looker, stranger] = [await makeViewer(), await makeViewer(), await makeViewer()];
});

beforeEach(async () => {
  const { callId } = await storeCall(designer, { call, title: "Invented call" });
  access = await callAccess(designer, callId, "owner");
  const { patternId } = access.pattern;
  await database().membership.create({ data: { patternId, accountId: looker.accountId, role: "viewer" } });
  await analyseCall(callId, engine.run);
});

afterAll(async () => await engine.stop());

describe("saving a plan", { timeout: 120_000 }, () => {
  it("makes the next revision, with the analysis and the plan frozen beside it", async () => {
    const planId = await workedOut([NECK_BAND]);
    const before = await differences();
    expect(await savePlan(access, { planId, reason: "The band takes more" })).toEqual({ number: 2 });
    const { output } = await storedPlan(access, planId);
    const revision = await latestRevision(access.pattern);
    expect(revision).toMatchObject({ number: 2, reason: "The band takes more" });
    expect(output).toMatchObject({ status: "revised", pattern: revision.document });
    expect(await revisionEvidence(access.pattern, 2)).toEqual({
      take: [NECK_BAND],
      causes: before.causes.map(({ movesCm: _, solvable: __, breaks: ___, rivals, ...cause }) => ({
        ...cause,
        rivals: rivals.map(({ solvable: ____, ...rival }) => rival),
      })),
      testers: call.testers.length,
      instructionErrors: [],
      call: { callId: access.callId, title: "Invented call" },
    });
    expect(await revisionEvidence(access.pattern, 1)).toBeNull();
  });

  it("is done once, however often it is sent", async () => {
    const planId = await workedOut([NECK_BAND]);
    await savePlan(access, { planId, reason: "Why" });
    expect(await savePlan(access, { planId, reason: "Why" })).toEqual({ number: 2 });
    expect(await database().revision.count({ where: { patternId: access.pattern.patternId } })).toBe(2);
  });

  it("is told where somebody saved meanwhile, and leaves nothing behind", async () => {
    const planId = await workedOut([NECK_BAND]);
    const { document } = await latestRevision(access.pattern);
    await saveRevision(access.pattern, { document: { ...document, name: "Another" }, reason: "Theirs", baseNumber: 1 });
    await expect(savePlan(access, { planId, reason: "Mine" })).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await latestRevision(access.pattern)).toMatchObject({ number: 2, reason: "Theirs" });
    expect(await revisionEvidence(access.pattern, 2)).toBeNull();
  });

  it("is not for those who may only look, for strangers, or before it is worked out", async () => {
    const planId = await workedOut([NECK_BAND]);
    for (const viewer of [looker, stranger]) {
      await expect(savePlan(as(viewer), { planId, reason: "Why" })).rejects.toMatchObject({ code: "not-found" });
    }
    expect((await storedPlan(as(looker), planId)).planId).toBe(planId);
    const request = { kind: "proposals", take: [NECK_BAND] } as const;
    const open = { request: { ...request, take: [...request.take] }, baseNumber: 1, idempotencyKey: randomUUID() };
    const { planId: unworked } = await requestPlan(access, open);
    await expect(savePlan(access, { planId: unworked, reason: "Why" })).rejects.toMatchObject({ code: "not-found" });
    expect(await database().revision.count({ where: { patternId: access.pattern.patternId } })).toBe(1);
  });

  it("shows its evidence to those with a part in the pattern only, and never changes it", async () => {
    await savePlan(access, { planId: await workedOut([NECK_BAND]), reason: "Why" });
    expect(await revisionEvidence(as(looker).pattern, 2)).not.toBeNull();
    expect(await revisionEvidence(as(stranger).pattern, 2)).toBeNull();
    const where = { callId: access.callId };
    for (const data of [{ analysis: "{}" }, { plan: "{}" }, { take: [] }, { instructionErrors: [{}] }])
      await expect(database().revisionEvidence.updateMany({ where, data })).rejects.toThrow();
  });

  it("leaves a wrong number of the text as a to-do, tells the testers, and has the size tested again", async () => {
    const planId = await workedOut([BODY]);
    await savePlan(access, { planId, reason: "Mended", tells: true });
    await savePlan(access, { planId, reason: "Mended", tells: true });
    const { document } = await latestRevision(access.pattern);
    const fix = { count: "body", size: "size-2x", was: 299, becomes: 292 };
    expect(await openInstructionFixes(access.pattern, document)).toMatchObject([{ ...fix, gives: "right" }]);
    expect(await correctedSizeStandings(access.pattern, document)).toMatchObject([
      { size: "size-2x", measurements: ["bust", "hem-width"], revisionNumber: 2, status: "due" },
    ]);
    expect(await publishedCorrections(access)).toMatchObject([
      { numbers: [fix], sizes: ["size-2x"], text: "Size 2X: work 292 stitches for “Body stitches”, not 299." },
    ]);
  });

  it("tells nobody unasked, nor what a correction has said already", async () => {
    const planId = await workedOut([BODY]);
    const { revisionId } = await latestRevision(access.pattern);
    const numbers = [{ count: "body", size: "size-2x", was: 299, becomes: 292 }];
    const said = { text: "Mine.", revisionId, place: null, numbers, sizes: ["size-2x"], idempotencyKey: randomUUID() };
    await publishCorrection(access, said);
    await savePlan(access, { planId, reason: "Mended", tells: true });
    expect(await publishedCorrections(access)).toMatchObject([{ text: "Mine." }]);
    const other = await callAccess(designer, (await storeCall(designer, { call, title: "Another" })).callId, "owner");
    await analyseCall(other.callId, engine.run);
    access = other;
    await savePlan(access, { planId: await workedOut([BODY]), reason: "Mended" });
    expect(await publishedCorrections(access)).toEqual([]);
  });

  it("has every size tested again whose stitches or rows it changes, and none where they are kept", async () => {
    await savePlan(access, { planId: await workedOut([NECK_BAND]), reason: "The band" });
    const { document } = await latestRevision(access.pattern);
    const corrected = await correctedSizeStandings(access.pattern, document);
    const changed = document.sizes.filter(({ id }) =>
      Object.keys(document.grading ?? {}).some(
        (count) => call.pattern.grading?.[count]?.[id] !== document.grading?.[count]?.[id],
      ),
    );
    expect(changed.length).toBeGreaterThan(0);
    expect(corrected.map(({ size }) => size)).toEqual(changed.map(({ id }) => id));
  });

  it("reads the reports on mended instructions by what was really worked, and later ones as they say", async () => {
    const reportedBodies = async () =>
      (await callDocument(access)).testers
        .filter(({ size }) => size === "size-2x")
        .map(({ worked }) => worked?.["body"]);
    // The grading's 292; the call names 7 more.
    expect(await reportedBodies()).toEqual([292, 292, 292]);
    await savePlan(access, { planId: await workedOut([BODY]), reason: "Mended" });
    expect(await revisionEvidence(access.pattern, 2)).toMatchObject({
      instructionErrors: [{ count: "body", size: "size-2x", amount: 7 }],
    });
    expect((await latestRevision(access.pattern)).document).toEqual(call.pattern);
    expect(await reportedBodies()).toEqual([299, 299, 299]);
    await analyseCall(access.callId, engine.run);
    const after = await differences();
    expect(after.cells.find(({ size, measurement }) => size === "size-2x" && measurement === "bust")?.verdict).toBe(
      "holds",
    );
    expect(after.causes.filter(({ kind }) => kind === "count")).toEqual([]);
    const tester = await database().tester.findFirstOrThrow({
      where: { callId: access.callId, reports: { some: { document: { path: ["size"], equals: "size-2x" } } } },
      include: { reports: true },
    });
    const revision = await database().revision.findFirstOrThrow({
      where: { number: 2, patternId: access.pattern.patternId },
    });
    const [report] = tester.reports;
    await database().report.create({
      data: {
        testerId: tester.id,
        version: 2,
        revisionId: revision.id,
        document: report?.document ?? {},
        idempotencyKey: randomUUID(),
      },
    });
    expect((await reportedBodies()).toSorted()).toEqual([292, 299, 299]);
  });
});
