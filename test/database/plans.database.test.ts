import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { EngineTask } from "@/engine/engine-task";
import { gaps } from "@/engine/gaps";
import { analyseCall } from "@/features/results/mutations";
import { storedPlan } from "../../src/features/results/changes/plan-data";
import { nextPlan, requestPlan, runPlan } from "../../src/features/results/changes/plan-mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { patternAccess } from "@/features/patterns/access";
import { saveRevision } from "@/features/patterns/mutations";
import { storeCall } from "@/features/testing/report/document-mutations";
import { database } from "@/server/database";
import type { RunTask } from "@/server/run-task";
import type { Viewer } from "@/server/viewer";
import { engineThread, type EngineThread } from "@/worker/engine-thread";
import { saltmarshCall } from "../../prisma/demo/saltmarsh-call";
import { makeViewer } from "./make-account";

const { call } = saltmarshCall();
const NECK_BAND = { kind: "allowance", id: "neck-band", by: "published" } as const;

let engine: EngineThread;
let designer: Viewer;
let stranger: Viewer;
let access: CallAccess;

beforeAll(async () => {
  engine = engineThread();
  [designer, stranger] = [await makeViewer(), await makeViewer()];
});

afterAll(async () => await engine.stop());

describe("a plan", { timeout: 60_000 }, () => {
  const newPlan = () => ({
    request: { kind: "proposals" as const, take: [{ ...NECK_BAND }] },
    baseNumber: 1,
    idempotencyKey: randomUUID(),
  });

  beforeEach(async () => {
    const { callId } = await storeCall(designer, { call, title: "Invented call" });
    access = await callAccess(designer, callId, "owner");
    await analyseCall(callId, engine.run);
  });

  it("is worked out once, with the reports replayed against what comes of it", async () => {
    const { planId } = await requestPlan(access, newPlan());
    expect((await storedPlan(access, planId)).output).toBeNull();
    await runPlan(planId, engine.run);
    const { output } = await storedPlan(access, planId);
    expect(output).toMatchObject({ status: "revised", changes: [{ was: -2 }] });
    if (output?.status !== "revised") throw new Error("the plan was not worked out");
    expect(output.replayed).toEqual(gaps({ ...call, pattern: output.pattern }));
    const never: RunTask<EngineTask> = () => Promise.reject(new Error("run twice"));
    await runPlan(planId, never);
  });

  it("is made once for one key", async () => {
    const plan = newPlan();
    const { planId } = await requestPlan(access, plan);
    expect(await requestPlan(access, plan)).toEqual({ planId });
    expect(await database().plan.count({ where: { callId: access.callId } })).toBe(1);
    expect(await nextPlan()).not.toBeNull();
  });

  it("of numbers corrected by hand says what is then to be expected", async () => {
    const typed = { "allowances.neck-band.cm": "-2.8" };
    const request = {
      kind: "correction",
      size: "size-l",
      measurement: "neck-width",
      typed,
      unit: "cm",
      reason: "",
    } as const;
    const { planId } = await requestPlan(access, { ...newPlan(), request });
    await runPlan(planId, engine.run);
    const { output } = await storedPlan(access, planId);
    if (output?.status !== "expected") throw new Error("the correction was not worked out");
    const cell = output.expectations.find((one) => one.size === "size-l" && one.measurement === "neck-width");
    // Two bands in the neck's width, each taking 0.8 cm more: 1.6 cm less is promised.
    expect((cell?.designCm.after ?? 0) - (cell?.designCm.before ?? 0)).toBeCloseTo(-1.6, 9);
    expect(cell?.touched).toBe(true);
  });

  it("names the number that cannot be read, and stores what the page can show", async () => {
    const typed = { "allowances.neck-band.cm": "about two" };
    const where = { size: "size-l", measurement: "neck-width", unit: "cm", reason: "" } as const;
    const { planId } = await requestPlan(access, { ...newPlan(), request: { kind: "correction", typed, ...where } });
    await runPlan(planId, engine.run);
    expect((await storedPlan(access, planId)).output).toMatchObject({
      status: "faults",
      faults: [{ path: "allowances.neck-band.cm", says: expect.stringContaining("“about two” is not a number") }],
    });
  });

  it("is overtaken by a report or a revision that comes in between", async () => {
    const { planId } = await requestPlan(access, newPlan());
    const editing = await patternAccess(designer, access.pattern.patternId, "editor");
    const document = { ...call.pattern, name: "Another name" };
    await saveRevision(editing, { document, reason: "Renamed", baseNumber: 1 });
    await runPlan(planId, engine.run);
    expect((await storedPlan(access, planId)).output).toEqual({ status: "overtaken" });
    await expect(requestPlan(access, newPlan())).rejects.toMatchObject({ code: "changed-meanwhile" });
  });

  it("never changes once it is worked out", async () => {
    const { planId } = await requestPlan(access, newPlan());
    await runPlan(planId, () => Promise.resolve(null));
    expect((await storedPlan(access, planId)).output).toEqual({ status: "stopped" });
    await expect(database().plan.update({ where: { id: planId }, data: { output: "{}" } })).rejects.toThrow();
    await expect(database().plan.update({ where: { id: planId }, data: { request: {} } })).rejects.toThrow();
  });

  it("that the engine fails at is said to have failed, and not tried again", async () => {
    const { planId } = await requestPlan(access, newPlan());
    await runPlan(planId, () => Promise.reject(new Error("on purpose")));
    expect((await storedPlan(access, planId)).output).toEqual({ status: "failed" });
  });

  it("of a call that cannot be read any more is said to have failed, and keeps no other waiting", async () => {
    const { planId } = await requestPlan(access, newPlan());
    const { patternId } = access.pattern;
    await database().revision.create({ data: { patternId, number: 2, document: {}, reason: "Damaged on purpose" } });
    await runPlan(planId, engine.run);
    expect((await storedPlan(access, planId)).output).toEqual({ status: "failed" });
  });

  it("is nobody's who has no part in its call", async () => {
    const { planId } = await requestPlan(access, newPlan());
    const forged = { ...access, pattern: { ...access.pattern, accountId: stranger.accountId } };
    await expect(storedPlan(forged, planId)).rejects.toMatchObject({ code: "not-found" });
    await expect(requestPlan(forged, newPlan())).rejects.toThrow();
  });
});
