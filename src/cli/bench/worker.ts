import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { Client } from "pg";
import { z } from "zod";
import type { CallDocument } from "@/engine/pattern";
import { benchCall } from "./bench-call";
import { seed, startServer } from "./bench-server";
import { engineTimer } from "./engine-time";
import { WorkerJobs } from "./worker-jobs";

const TESTERS = 300;
const WARM = 5;
const ANALYSES = 15;
const PICKED_UP = 200;
const FIGURES = "test/figures";

const MIN_JOBS_A_SECOND = 50;
const MIN_SHARE = 0.9;
const MAX_PICK_UP_MS = 100;

const HEAD = [
  "The built worker beside a PostgreSQL of its own, on all cores; times as its log tells them. A job that does nothing is",
  "a call without a report, read, analysed and stored. The engine's own time is `analyseCall` alone, in a thread that runs",
  "the same build; the worker's runs from taking a call up until its results are stored. Picked up: from sending the",
  "statement that raises the call's version until the idle worker has begun it.",
];

const seededSchema = z.object({ callId: z.string(), emptyIds: z.array(z.string()) });

interface WorkerBench {
  readonly jobs: WorkerJobs;
  readonly raise: (callIds: readonly string[]) => Promise<unknown>;
}

/** How many jobs the worker does, what it adds to the engine's own time, and how soon it begins. */
export async function workerBench(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-bench-"));
  chmodSync(folder, 0o755);
  const jobs = new WorkerJobs();
  const server = await startServer(folder, { isPinned: false, onLog: jobs.onLog });
  const client = new Client({ connectionString: readFileSync(join(folder, "database-url"), "utf8").trim() });
  try {
    await client.connect();
    const script = "prisma/seed-worker-calls.ts";
    const { callId, emptyIds } = seededSchema.parse(
      await seed({ folder, address: server.address, script, size: TESTERS }),
    );
    await allAnalysed(client);
    const raise = async (ids: readonly string[]) =>
      await client.query("UPDATE call SET version = version + 1, version_raised_at = now() WHERE id = ANY ($1)", [ids]);
    const bench = { jobs, raise };
    const text = [
      ...HEAD,
      "",
      await emptyRow(bench, emptyIds),
      await analysisRow(bench, { callId, document: benchCall(TESTERS) }),
      await pickedUpRow(bench, emptyIds),
      "",
    ].join("\n");
    mkdirSync(FIGURES, { recursive: true });
    writeFileSync(`${FIGURES}/bench-worker.txt`, text);
    return text;
  } finally {
    await client.end();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What was seeded is analysed once; from then on only what the bench raises. */
async function allAnalysed(client: Client): Promise<void> {
  for (;;) {
    const { rowCount } = await client.query(
      "SELECT FROM call WHERE NOT EXISTS (SELECT FROM analysis WHERE call_id = call.id AND call_version = call.version)",
    );
    if (rowCount === 0) return;
    await pause(100);
  }
}

async function emptyRow({ jobs, raise }: WorkerBench, emptyIds: readonly string[]): Promise<string> {
  const began = Date.now();
  const done = await jobs.following(emptyIds.length, () => raise(emptyIds));
  const seconds = (Math.max(...done.map(({ doneAt }) => doneAt)) - began) / 1000;
  const perSecond = emptyIds.length / seconds;
  const figures = `${perSecond.toFixed(1)} a second (at least ${MIN_JOBS_A_SECOND})`;
  return row("jobs that do nothing", figures, perSecond >= MIN_JOBS_A_SECOND);
}

/** Engine and worker in turn, so that a busy minute of the machine counts for both. */
async function analysisRow(
  { jobs, raise }: WorkerBench,
  { callId, document }: { readonly callId: string; readonly document: CallDocument },
): Promise<string> {
  const timer = await engineTimer();
  const own: number[] = [];
  const whole: number[] = [];
  for (let run = 0; run < WARM + ANALYSES; run += 1) {
    const ownMs = await timer.msOf(document);
    const [done] = await jobs.following(1, () => raise([callId]));
    if (run < WARM || done === undefined) continue;
    own.push(ownMs);
    whole.push(done.ms);
  }
  await timer.stop();
  const [ownMs, wholeMs] = [quantile(own, 0.5), quantile(whole, 0.5)];
  const share = ownMs / wholeMs;
  const figures = `${(100 * share).toFixed(1)} % of the worker's ${wholeMs.toFixed(0)} ms are the engine's own ${ownMs.toFixed(0)} ms (at least ${100 * MIN_SHARE} %)`;
  return row(`analysis of ${TESTERS} testers`, figures, share >= MIN_SHARE);
}

async function pickedUpRow({ jobs, raise }: WorkerBench, emptyIds: readonly string[]): Promise<string> {
  const waits: number[] = [];
  for (let time = 0; time < PICKED_UP; time += 1) {
    const sentAt = Date.now();
    const [done] = await jobs.following(1, () => raise([emptyIds[time % emptyIds.length] ?? ""]));
    if (done !== undefined) waits.push(done.begunAt - sentAt);
    // The worker looks by itself once a second: asked at uneven moments, that look is not what finds the call.
    await pause(7 * (time % 13));
  }
  const waitMs = quantile(waits, 0.95);
  const figures = `95 % of ${waits.length} within ${waitMs.toFixed(0)} ms, half within ${quantile(waits, 0.5).toFixed(0)} ms (within ${MAX_PICK_UP_MS} ms)`;
  return row("picked up", figures, waitMs <= MAX_PICK_UP_MS);
}

function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((left, right) => left - right);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

function row(name: string, figures: string, isMet: boolean): string {
  return `${name.padEnd(28)}  ${figures}  ${isMet ? "met" : "missed"}`;
}
