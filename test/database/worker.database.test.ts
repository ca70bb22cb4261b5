import { randomUUID } from "node:crypto";
import { Client } from "pg";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { EngineTask } from "@/engine/engine-task";
import { analyseCall as computeResults, printResults } from "@/engine/results";
import { analyseCall } from "@/features/results/mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { currentCall } from "@/features/calls/data";
import { raiseCallVersion } from "@/features/calls/mutations";
import { patternAccess } from "@/features/patterns/access";
import { saveRevision } from "@/features/patterns/mutations";
import { storeCall } from "@/features/testing/report/document-mutations";
import { addReports } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import { environment } from "@/server/environment";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { engineThread, type EngineThread } from "@/worker/engine-thread";
import { listen } from "@/worker/listen";
import { startWorkLoop } from "@/worker/work-loop";
import { saltmarshCall } from "../../prisma/demo/saltmarsh-call";
import { reader } from "../factories/call";
import { makeViewer } from "./make-account";

const { call } = saltmarshCall();
const CHANNEL = "sizewright_work";

let engine: EngineThread;
let designer: Viewer;
let access: CallAccess;

async function version(): Promise<number> {
  return (await currentCall(access)).version;
}

beforeAll(async () => {
  engine = engineThread();
  designer = await makeViewer();
});

beforeEach(async () => {
  const { callId } = await storeCall(designer, { call, title: "Invented call" });
  access = await callAccess(designer, callId, "owner");
});

afterAll(async () => await engine.stop());

describe("the version of a call", () => {
  it("is part of the write: undone with it, done with it", async () => {
    const before = await version();
    const failing = inTransaction(async (connection) => {
      await raiseCallVersion(connection, access.callId);
      throw new Error("on purpose");
    });
    await expect(failing).rejects.toThrow("on purpose");
    expect(await version()).toBe(before);
  });

  it("is raised by every write that changes what a call is compared with, and announced to the worker", async () => {
    const heard: string[] = [];
    const client = new Client({ connectionString: environment().DATABASE_URL });
    await client.connect();
    client.on("notification", ({ payload = "" }) => heard.push(payload));
    await client.query(`LISTEN ${CHANNEL}`);
    const before = await version();
    const document = call.pattern;
    const { id: revisionId } = await database().revision.findFirstOrThrow({
      where: { patternId: access.pattern.patternId },
    });
    const tester = { ...reader("late", {}, { size: "size-m" }), readings: [{ measurement: "bust", cm: 101 }] };
    const reports = [{ tester, typed: {}, idempotencyKey: randomUUID() }];
    await addReports(access, { revision: { revisionId, document }, reports });
    expect(await version()).toBe(before + 1);
    // Sent again, it adds nothing, and nothing is analysed again.
    await addReports(access, { revision: { revisionId, document }, reports });
    expect(await version()).toBe(before + 1);
    const editing = await patternAccess(designer, access.pattern.patternId, "editor");
    await saveRevision(editing, { document: { ...document, name: "Another name" }, reason: "Renamed", baseNumber: 1 });
    expect(await version()).toBe(before + 2);
    await client.query("SELECT 1");
    expect(heard.filter((table) => table === "call").length).toBeGreaterThanOrEqual(2);
    await client.end();
  });
});

describe("the worker", { timeout: 60_000 }, () => {
  it("passes over a call that is gone", async () => {
    await expect(analyseCall(randomUUID(), engine.run)).resolves.toBeUndefined();
  });

  it("stops what takes too long, and goes on with the next in a new thread", async () => {
    const hasty = engineThread(1);
    expect(await hasty.run({ kind: "analyse", call })).toBeNull();
    expect(await hasty.run({ kind: "analyse", call })).toBeNull();
    await hasty.stop();
    expect(await engine.run({ kind: "analyse", call })).toBe(printResults(computeResults(call)));
  });

  it("tells of a task that the engine cannot do, and goes on with the next", async () => {
    const impossible = { kind: "analyse", call: { ...call, pattern: { ...call.pattern, sizes: [] } } } as const;
    await expect(engine.run(impossible)).rejects.toThrow("the engine's thread failed");
    expect(await engine.run({ kind: "analyse", call })).toBe(printResults(computeResults(call)));
  });

  it("that is stopped with a call under way stores nothing of it, and takes it up at the next start", async () => {
    const thread = engineThread();
    const interrupted: RunTask<EngineTask> = async (task, signal) => {
      const running = thread.run(task, signal);
      await thread.stop();
      return await running;
    };
    await expect(analyseCall(access.callId, interrupted)).rejects.toBeInstanceOf(TaskInterrupted);
    expect(await database().analysis.count({ where: { callId: access.callId } })).toBe(0);
    await analyseCall(access.callId, engine.run);
    expect(await database().analysis.count({ where: { callId: access.callId, status: "done" } })).toBe(1);
  });

  it("takes the next piece at once, and looks when it is woken", async () => {
    const waiting = ["first", "second"];
    const done: string[] = [];
    const loop = startWorkLoop({
      next: () => {
        const piece = waiting.shift();
        if (piece !== undefined) done.push(piece);
        return Promise.resolve(piece !== undefined);
      },
      onError: () => undefined,
      lookEveryMs: 3_600_000,
    });
    await expect.poll(() => done).toEqual(["first", "second"]);
    waiting.push("third");
    loop.wake();
    await expect.poll(() => done).toEqual(["first", "second", "third"]);
    await loop.stop();
  });

  it("can be woken any number of times between two looks of its own", async () => {
    const warnings: string[] = [];
    const onWarning = ({ name }: Error) => warnings.push(name);
    process.on("warning", onWarning);
    let looks = 0;
    const next = () => Promise.resolve((looks += 1) === 0);
    const loop = startWorkLoop({ next, onError: () => undefined, lookEveryMs: 3_600_000 });
    for (let woken = 1; woken <= 20; woken += 1) {
      await expect.poll(() => looks, { interval: 1 }).toBe(woken);
      loop.wake();
    }
    await expect.poll(() => looks, { interval: 1 }).toBe(21);
    await loop.stop();
    process.off("warning", onWarning);
    expect(warnings).toEqual([]);
  });

  it("goes on after a piece that failed", async () => {
    const errors: unknown[] = [];
    let pieces = 0;
    const loop = startWorkLoop({
      next: () => {
        pieces += 1;
        return pieces === 1 ? Promise.reject(new Error("on purpose")) : Promise.resolve(false);
      },
      onError: (error) => errors.push(error),
      lookEveryMs: 10,
    });
    await expect.poll(() => pieces).toBeGreaterThan(1);
    expect(errors).toHaveLength(1);
    await loop.stop();
  });

  it("hears of work again once its lost connection stands anew", async () => {
    const heard: (string | null)[] = [];
    const connectionString = environment().DATABASE_URL;
    const listening = listen({ connectionString, channel: CHANNEL, heard: (payload) => heard.push(payload) });
    await expect.poll(() => heard.length).toBe(1);
    await database().$queryRaw`
      SELECT pg_terminate_backend(pid) FROM pg_stat_activity
      WHERE application_name = 'sizewright worker' AND datname = current_database()`;
    await expect.poll(() => heard.length, { timeout: 20_000 }).toBe(2);
    await database().$executeRaw`SELECT pg_notify(${CHANNEL}, 'call')`;
    await expect.poll(() => heard.at(-1), { timeout: 20_000 }).toBe("call");
    await listening.stop();
  });
});
