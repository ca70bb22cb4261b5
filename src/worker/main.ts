import type { EngineTask } from "@/engine/engine-task";
import { analyseCall, nextCallToAnalyse } from "@/features/results/mutations";
import { nextEmailLinkPurge, purgeEmailLinks } from "@/features/accounts/email-links/purge-mutations";
import { nextPurge, purgeMessages } from "@/features/mail/purge-mutations";
import { checkMailServer, nextMailCheck } from "@/features/mail/server-mutations";
import { nextMessage, sendMessage } from "@/features/mail/send-mutations";
import {
  deleteFilesOfPhoto,
  makePictures,
  nextDeletedPhoto,
  nextPhoto,
  nextSweep,
  sweepOriginals,
} from "@/features/testing/photos/photo-work-mutations";
import { nextPlan, runPlan } from "@/features/results/changes/plan-mutations";
import { nextGradingPurge, purgeGradings } from "@/features/patterns/grading/purge-mutations";
import { nextGrading, runGrading } from "@/features/patterns/grading/mutations";
import { nextViewPurge, purgeViews } from "@/features/recruiting/views/purge-mutations";
import { nextRetention, runRetention } from "@/features/testing/retention/retention-mutations";
import { nextPlacing, runPlacing } from "@/features/recruiting/places/placing-mutations";
import { nextReminded, writeReminders } from "@/features/testing/reminders/reminder-mutations";
import { nextSummary, writeSummaries } from "@/features/results/summary/summary-mutations";
import { environment } from "@/server/environment";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { engineThread } from "./engine-thread";
import { listen } from "./listen";
import { startWorkLoop } from "./work-loop";

/** What triggers announce, by the table that a row is new in. */
const CHANNEL = "sizewright_work";

interface Job {
  readonly name: string;
  /** Id of the row that waits for it, null where none does. */
  readonly next: () => Promise<string | null>;
  readonly run: (id: string, run: RunTask<EngineTask>) => Promise<void>;
}

/** One engine thread, and the jobs that share it, in order of arrival. */
function startLane(jobs: readonly Job[]) {
  const thread = engineThread();
  const loop = startWorkLoop({
    next: () => takeFirst(jobs, thread.run),
    onError: (error) => {
      if (error instanceof TaskInterrupted) return;
      log.error({ reason: error instanceof Error ? error.message : "unknown" }, "a job failed");
    },
  });
  return { wake: loop.wake, stop: async () => void (await Promise.all([thread.stop(), loop.stop()])) };
}

async function takeFirst(jobs: readonly Job[], run: RunTask<EngineTask>): Promise<boolean> {
  for (const job of jobs) {
    const id = await job.next();
    if (id === null) continue;
    const began = performance.now();
    await job.run(id, run);
    log.info({ job: job.name, id, ms: Math.round(performance.now() - began) }, "job done");
    return true;
  }
  return false;
}

const HOUR_MS = 60 * 60_000;
const SWEEP_MS = 5 * 60_000;
const REMINDERS_MS = 5 * 60_000;

/** Looks for work of which none is urgent once in a while. */
function onceIn(waitMs: number, next: () => Promise<string | null>): Job["next"] {
  let lookAgainAtMs = 0;
  return async () => {
    if (Date.now() < lookAgainAtMs) return null;
    lookAgainAtMs = Date.now() + waitMs;
    return await next();
  };
}

// A designer editing a pattern never waits for a large call.
const lanes = [
  startLane([{ name: "analyse-call", next: nextCallToAnalyse, run: analyseCall }]),
  startLane([
    { name: "run-grading", next: nextGrading, run: runGrading },
    { name: "run-plan", next: nextPlan, run: runPlan },
  ]),
  startLane([{ name: "run-placing", next: nextPlacing, run: runPlacing }]),
  // A mail server that is slow keeps nobody but other mail waiting.
  startLane([
    { name: "send-message", next: nextMessage, run: sendMessage },
    { name: "purge-messages", next: onceIn(HOUR_MS, () => nextPurge()), run: () => purgeMessages() },
    { name: "write-reminders", next: onceIn(REMINDERS_MS, () => nextReminded()), run: () => writeReminders() },
    { name: "write-summaries", next: onceIn(REMINDERS_MS, () => nextSummary()), run: () => writeSummaries() },
    { name: "purge-email-links", next: onceIn(HOUR_MS, () => nextEmailLinkPurge()), run: () => purgeEmailLinks() },
  ]),
  // Nobody waits for these.
  startLane([
    { name: "check-mail-server", next: onceIn(Infinity, nextMailCheck), run: () => checkMailServer() },
    { name: "purge-views", next: onceIn(HOUR_MS, () => nextViewPurge()), run: () => purgeViews() },
    { name: "purge-gradings", next: onceIn(HOUR_MS, () => nextGradingPurge()), run: () => purgeGradings() },
    { name: "delete-people", next: onceIn(HOUR_MS, () => nextRetention()), run: (id) => runRetention(id) },
  ]),
  // Large photos take seconds each.
  startLane([
    { name: "delete-photo-files", next: nextDeletedPhoto, run: deleteFilesOfPhoto },
    { name: "make-pictures", next: nextPhoto, run: makePictures },
    { name: "sweep-originals", next: onceIn(SWEEP_MS, nextSweep), run: () => sweepOriginals() },
  ]),
];
const listening = listen({
  connectionString: environment().DATABASE_URL,
  channel: CHANNEL,
  heard: () => lanes.forEach(({ wake }) => wake()),
});

async function stop(): Promise<void> {
  await Promise.all([listening.stop(), ...lanes.map((lane) => lane.stop())]);
  process.exit();
}

for (const signal of ["SIGTERM", "SIGINT", "SIGHUP", "disconnect"] as const) process.once(signal, () => void stop());
process.send?.("ready");
