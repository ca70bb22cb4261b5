import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { storedResults } from "@/features/results/data";
import { analyseCall } from "@/features/results/mutations";
import { revisionEvidence, storedPlan } from "../../src/features/results/changes/plan-data";
import { requestPlan, runPlan, savePlan } from "../../src/features/results/changes/plan-mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument, currentCall } from "@/features/calls/data";
import { PAGE_PARTS } from "@/features/results/schema";
import { latestRevision } from "@/features/patterns/data";
import { saveRevision } from "@/features/patterns/mutations";
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
