import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { gaps } from "@/engine/gaps";
import type { EngineTask } from "@/engine/engine-task";
import { storedAnalysis } from "@/features/analyses/data";
import { analysisInput } from "@/features/analyses/analysis-input";
import { enqueueUnreckonedCalls, reckonCall } from "@/features/analyses/mutations";
import { storedPlan } from "@/features/analyses/plan-data";
import { planRevision, reckonPlan } from "@/features/analyses/plan-mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { saveRevision } from "@/features/patterns/mutations";
import { storeCall } from "@/features/reports/document-mutations";
import { addReports } from "@/features/reports/mutations";
import { database } from "@/server/database";
import { enqueue } from "@/server/queue";
import type { Reckon } from "@/server/reckon";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { engineThread, type EngineThread } from "@/worker/engine-thread";
import { saltmarshCall } from "../../prisma/demo/saltmarsh-call";
import { reader } from "../factories/call";
import { makeAccount } from "./make-account";

const { call } = saltmarshCall();
const NECK_BAND = { kind: "allowance", id: "neck-band", by: "published" } as const;

let engine: EngineThread;
let designer: Viewer;
let stranger: Viewer;
let access: CallAccess;

async function person(): Promise<Viewer> {
  const { id, name, email } = await makeAccount();
  return { accountId: id, name, email, unit: "cm" };
}

async function jobs(queue: string, id: string): Promise<number> {
  const rows = await database().$queryRaw<unknown[]>`
    SELECT 1 FROM pgboss.job WHERE name = ${queue} AND data ->> 'id' = ${id} AND state = 'created'`;
  return rows.length;
}

beforeAll(async () => {
  engine = engineThread();
  [designer, stranger] = [await person(), await person()];
});

beforeEach(async () => {
  const { callId } = await storeCall(designer, { call, title: "Invented call" });
  access = await callAccess(designer, callId, "owner");
});

afterAll(async () => await engine.stop());

describe("asking the worker", () => {
  it("is part of the write: undone with it, done with it", async () => {
    const id = randomUUID();
    const failing = inTransaction(async (connection) => {
      await enqueue(connection, "reckon-call", id);
      throw new Error("on purpose");
    });
    await expect(failing).rejects.toThrow("on purpose");
    expect(await jobs("reckon-call", id)).toBe(0);
    await inTransaction((connection) => enqueue(connection, "reckon-call", id));
    expect(await jobs("reckon-call", id)).toBe(1);
  });

  it("goes with every write that changes what a call is compared with", async () => {
    const { callId, pattern } = access;
    const brought = await jobs("reckon-call", callId);
    expect(brought).toBeGreaterThan(0);
    const document = call.pattern;
    const { id: revisionId } = await database().revision.findFirstOrThrow({ where: { patternId: pattern.patternId } });
    const tester = { ...reader("late", {}, { size: "size-m" }), readings: [{ measurement: "bust", cm: 101 }] };
    await addReports(access, {
      revision: { revisionId, document },
      reports: [{ tester, typed: {}, submissionKey: randomUUID() }],
    });
    expect(await jobs("reckon-call", callId)).toBe(brought + 1);
    const editing = await patternAccess(designer, pattern.patternId, "editor");
    await saveRevision(editing, { document: { ...document, name: "Another name" }, reason: "Renamed", baseNumber: 1 });
    expect(await jobs("reckon-call", callId)).toBe(brought + 2);
  });
});

describe("the worker", () => {
  it("keeps of a call what the engine prints, byte for byte", async () => {
    await reckonCall(access.callId, engine.reckon);
    const row = await database().analysis.findFirstOrThrow({ where: { callId: access.callId } });
    expect(row.output).toBe(JSON.stringify(gaps(await callDocument(access))));
  });

  it("passes over a call that is gone", async () => {
    await expect(reckonCall(randomUUID(), engine.reckon)).resolves.toBeUndefined();
  });

  it("finds the calls that nothing was kept for, and only those", async () => {
    const before = await jobs("reckon-call", access.callId);
    await enqueueUnreckonedCalls();
    expect(await jobs("reckon-call", access.callId)).toBe(before + 1);
    await reckonCall(access.callId, engine.reckon);
    await enqueueUnreckonedCalls();
    expect(await jobs("reckon-call", access.callId)).toBe(before + 1);
  });

  it("stops what takes too long, and goes on with the next in a new thread", async () => {
    const hasty = engineThread(1);
    expect(await hasty.reckon({ kind: "gaps", call })).toBeNull();
    expect(await hasty.reckon({ kind: "gaps", call })).toBeNull();
    await hasty.stop();
    expect(await engine.reckon({ kind: "gaps", call })).toBe(JSON.stringify(gaps(call)));
  });

  it("tells of a task that the engine cannot do, and goes on with the next", async () => {
    const impossible = { kind: "gaps", call: { ...call, pattern: { ...call.pattern, sizes: [] } } } as const;
    await expect(engine.reckon(impossible)).rejects.toThrow("the engine's thread failed");
    expect(await engine.reckon({ kind: "gaps", call })).toBe(JSON.stringify(gaps(call)));
  });
});

describe("a plan", () => {
  const newPlan = () => ({ take: [NECK_BAND], baseNumber: 1, submissionKey: randomUUID() });

  it("is worked out once, with the reports replayed against what comes of it", async () => {
    const { planId } = await planRevision(access, newPlan());
    expect((await storedPlan(access, planId)).output).toBeNull();
    await reckonPlan(planId, engine.reckon);
    const { output } = await storedPlan(access, planId);
    expect(output).toMatchObject({ status: "revised", changes: [{ was: -2 }] });
    if (output?.status !== "revised") throw new Error("the plan was not worked out");
    expect(output.replayed).toEqual(gaps({ ...call, pattern: output.pattern }));
    const never: Reckon<EngineTask> = () => Promise.reject(new Error("reckoned twice"));
    await reckonPlan(planId, never);
  });

  it("is made once for one key", async () => {
    const plan = newPlan();
    const { planId } = await planRevision(access, plan);
    expect(await planRevision(access, plan)).toEqual({ planId });
    expect(await jobs("reckon-plan", planId)).toBe(1);
  });

  it("is overtaken by a report or a revision that comes in between", async () => {
    const { planId } = await planRevision(access, newPlan());
    const editing = await patternAccess(designer, access.pattern.patternId, "editor");
    const document = { ...call.pattern, name: "Another name" };
    await saveRevision(editing, { document, reason: "Renamed", baseNumber: 1 });
    await reckonPlan(planId, engine.reckon);
    expect((await storedPlan(access, planId)).output).toEqual({ status: "overtaken" });
    await expect(planRevision(access, newPlan())).rejects.toMatchObject({ code: "changed-meanwhile" });
  });

  it("never changes once it is worked out", async () => {
    const { planId } = await planRevision(access, newPlan());
    await reckonPlan(planId, () => Promise.resolve(null));
    expect((await storedPlan(access, planId)).output).toEqual({ status: "stopped" });
    await expect(database().plan.update({ where: { id: planId }, data: { output: "{}" } })).rejects.toThrow();
    await expect(database().plan.update({ where: { id: planId }, data: { take: [] } })).rejects.toThrow();
  });

  it("is nobody's who has no part in its call", async () => {
    const { planId } = await planRevision(access, newPlan());
    const forged = { ...access, pattern: { ...access.pattern, accountId: stranger.accountId } };
    await expect(storedPlan(forged, planId)).rejects.toMatchObject({ code: "not-found" });
    await expect(planRevision(forged, newPlan())).rejects.toThrow();
    expect(await storedAnalysis(forged, analysisInput(await callDocument(access)))).toBeNull();
  });
});
