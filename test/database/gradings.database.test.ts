import { randomUUID } from "node:crypto";
import { setImmediate } from "node:timers/promises";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { benchGarment } from "@/cli/bench/bench-garment";
import type { EngineTask } from "@/engine/engine-task";
import { gradeChoices } from "@/engine/grading";
import type { PatternDocument } from "@/engine/pattern";
import { gradingAnswer } from "@/features/patterns/grading/data";
import { endGrading, nextGrading, runGrading, requestGrading } from "@/features/patterns/grading/mutations";
import { patternAccess, type PatternAccess } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { database } from "@/server/database";
import type { RunTask } from "@/server/run-task";
import { highsSolver } from "@/solver/highs-solver";
import { engineThread, type EngineThread } from "@/worker/engine-thread";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";

const pattern = patternDocument();
let engine: EngineThread;
let designer: PatternAccess;
let editor: PatternAccess;

async function joined(patternId: string, role: "editor" | "viewer"): Promise<PatternAccess> {
  const viewer = await makeViewer();
  await database().membership.create({ data: { patternId, accountId: viewer.accountId, role } });
  return await patternAccess(viewer, patternId, role);
}

const asked = (document: PatternDocument = pattern) => ({ pattern: document, idempotencyKey: randomUUID() });

const never: RunTask<EngineTask> = () => Promise.reject(new Error("run for nobody"));

beforeAll(() => {
  engine = engineThread();
});

beforeEach(async () => {
  const owner = await makeViewer();
  const { patternId } = await createPattern(owner, { document: pattern, reason: "First" });
  designer = await patternAccess(owner, patternId, "owner");
  editor = await joined(patternId, "editor");
});

afterAll(async () => await engine.stop());

describe("a grading that is asked for", { timeout: 60_000 }, () => {
  it("waits for the worker, and is then what the engine prints for the pattern as it was sent", async () => {
    const { gradingId } = await requestGrading(designer, asked());
    expect(await gradingAnswer(designer, gradingId)).toEqual({ status: "waiting" });
    expect(await nextGrading()).toBe(gradingId);
    await runGrading(gradingId, engine.run);
    const answer = await gradingAnswer(designer, gradingId);
    const outcome = gradeChoices(pattern, await highsSolver());
    expect(answer).toEqual({ status: "done", outcome: JSON.parse(JSON.stringify(outcome)) as unknown });
    // (90 + 10 − 2 × 1) ÷ 2 = 49 cm, at 2 stitches to the cm 98; (110 + 10 − 2) ÷ 2 = 59 cm, 118.
    const width = { small: 98, large: 118 };
    expect(outcome).toMatchObject({ status: "graded", choices: [{ grading: { width } }] });
    await runGrading(gradingId, never);
  });

  it("is told in sentences where a count is free, and where rules clash with what would loosen them", async () => {
    const free = await requestGrading(designer, asked({ ...pattern, grading: undefined }));
    const locked = pattern.counts.map((count) => ({ ...count, locked: { small: 7, large: 5 } }));
    const clash = await requestGrading(designer, asked({ ...pattern, counts: locked }));
    await runGrading(free.gradingId, engine.run);
    await runGrading(clash.gradingId, engine.run);
    expect(await gradingAnswer(designer, free.gradingId)).toMatchObject({
      status: "done",
      outcome: { status: "graded", choices: [{}], missing: [{ path: "counts[1]" }] },
    });
    expect(await gradingAnswer(designer, clash.gradingId)).toMatchObject({
      status: "done",
      outcome: {
        status: "infeasible",
        clash: [{ clash: { rule: "locked", count: "width", size: "small" } }, { helps: true }, { helps: true }],
      },
    });
  });

  it("is stored once for one key, and a key that somebody else used is nobody's", async () => {
    const sent = asked();
    const twice = await Promise.all([requestGrading(designer, sent), requestGrading(designer, sent)]);
    expect(twice[0]).toEqual(twice[1]);
    expect(await database().grading.count({ where: { id: twice[0].gradingId } })).toBe(1);
    await expect(requestGrading(editor, sent)).rejects.toMatchObject({ code: "not-found" });
  });

  it("is kept for as long as it may be looked at: the newest three of a person and pattern", async () => {
    const own = await requestGrading(editor, asked());
    const ids: string[] = [];
    for (let at = 0; at < 4; at += 1) ids.push((await requestGrading(designer, asked())).gradingId);
    const [oldest = "", ...kept] = ids;
    await expect(gradingAnswer(designer, oldest)).rejects.toMatchObject({ code: "not-found" });
    for (const id of kept) expect(await gradingAnswer(designer, id)).toEqual({ status: "waiting" });
    expect(await gradingAnswer(editor, own.gradingId)).toEqual({ status: "waiting" });
    await runGrading(oldest, never);
  });
});

describe("a grading that is stopped", { timeout: 60_000 }, () => {
  it("stays stopped, however late the engine is done with it", async () => {
    const { gradingId } = await requestGrading(designer, asked());
    await runGrading(gradingId, async (task) => {
      await endGrading(designer, gradingId);
      return await engine.run(task);
    });
    expect(await gradingAnswer(designer, gradingId)).toMatchObject({ status: "stopped" });
    await runGrading(gradingId, never);
    const data = { status: "done", output: "{}" } as const;
    await expect(database().grading.update({ where: { id: gradingId }, data })).rejects.toThrow();
  });

  it("ends the engine's thread", async () => {
    const { gradingId } = await requestGrading(designer, asked());
    let told = false;
    await runGrading(gradingId, async (_task, signal) => {
      await endGrading(designer, gradingId);
      await new Promise((resolve) => signal?.addEventListener("abort", resolve));
      told = true;
      return null;
    });
    expect(told).toBe(true);
    expect(await gradingAnswer(designer, gradingId)).toMatchObject({ status: "stopped" });
    const long = { kind: "grade", pattern: benchGarment({ sizes: 24, groups: 5 }) } as const;
    const stopping = new AbortController();
    const [running, next] = [engine.run(long, stopping.signal), engine.run(long, stopping.signal)];
    await setImmediate();
    stopping.abort();
    expect([await running, await next]).toEqual([null, null]);
    expect(await engine.run({ kind: "grade", pattern })).toContain('"graded"');
  });

  it("is told apart from one that took too long, and one that is done stays done", async () => {
    const late = await requestGrading(designer, asked());
    await runGrading(late.gradingId, () => Promise.resolve(null));
    const stopped = await requestGrading(designer, asked());
    await endGrading(designer, stopped.gradingId);
    const says = (part: string) => ({ status: "stopped", says: expect.stringContaining(part) as string });
    expect(await gradingAnswer(designer, late.gradingId)).toEqual(says("took too long"));
    expect(await gradingAnswer(designer, stopped.gradingId)).toEqual(says("You stopped"));
    const done = await requestGrading(designer, asked());
    await runGrading(done.gradingId, engine.run);
    await endGrading(designer, done.gradingId);
    expect(await gradingAnswer(designer, done.gradingId)).toMatchObject({ status: "done" });
  });
});

describe("a grading", () => {
  it("is read and stopped by whoever asked for it, and by nobody else", async () => {
    const { gradingId } = await requestGrading(designer, asked());
    const stranger = { ...designer, accountId: (await makeViewer()).accountId };
    const looker = await joined(designer.patternId, "viewer");
    const other = await createPattern(await makeViewer(), { document: pattern, reason: "First" });
    const elsewhere = { ...designer, patternId: other.patternId };
    for (const access of [stranger, looker, editor, elsewhere]) {
      await expect(gradingAnswer(access, gradingId)).rejects.toMatchObject({ code: "not-found" });
      await endGrading(access, gradingId);
    }
    await expect(gradingAnswer(designer, "no id")).rejects.toMatchObject({ code: "not-found" });
    expect(await gradingAnswer(designer, gradingId)).toEqual({ status: "waiting" });
  });

  it("is asked for by editors only", async () => {
    const stranger = { ...designer, accountId: (await makeViewer()).accountId };
    const looker = await joined(designer.patternId, "viewer");
    for (const access of [stranger, looker]) await expect(requestGrading(access, asked())).rejects.toThrow();
    expect(await database().grading.count({ where: { patternId: designer.patternId } })).toBe(0);
    expect((await requestGrading(editor, asked())).gradingId).not.toBe("");
  });
});
