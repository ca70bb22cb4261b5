import { z } from "zod";
import { enqueueUnreckonedCalls, reckonCall } from "@/features/analyses/mutations";
import { reckonPlan } from "@/features/analyses/plan-mutations";
import { reckonGrading } from "@/features/gradings/mutations";
import { environment } from "@/server/environment";
import { log } from "@/server/log";
import { openQueues, type Queue } from "@/server/queue";
import { engineThread } from "./engine-thread";

/** People wait for what they have just sent. */
const LOOK_EVERY_SECONDS = 0.5;
const SWEEP_EVERY_MS = 300_000;

const jobSchema = z.object({ id: z.uuid() });

const boss = await openQueues(environment().DATABASE_URL);
boss.on("error", ({ message }) => log.error({ reason: message }, "the queue failed"));
const { reckon, stop: stopEngine } = engineThread();
/** A thread of their own: a designer at her pattern waits for no large call. */
const gradings = engineThread();

async function workOff(queue: Queue, handle: (id: string) => Promise<void>): Promise<void> {
  await boss.work(queue, { pollingIntervalSeconds: LOOK_EVERY_SECONDS, batchSize: 1 }, async ([job]) => {
    const { id } = jobSchema.parse(job?.data);
    const begun = performance.now();
    try {
      await handle(id);
      log.info({ queue, id, ms: Math.round(performance.now() - begun) }, "job done");
    } catch (error) {
      log.error({ queue, id, reason: error instanceof Error ? error.message : "unknown" }, "job failed");
      throw error;
    }
  });
}

await workOff("reckon-call", (callId) => reckonCall(callId, reckon));
await workOff("reckon-plan", (planId) => reckonPlan(planId, reckon));
await workOff("reckon-grading", (gradingId) => reckonGrading(gradingId, gradings.reckon));

const sweep = () =>
  enqueueUnreckonedCalls().catch((error: unknown) =>
    log.error({ reason: error instanceof Error ? error.message : "unknown" }, "the sweep failed"),
  );
await sweep();
setInterval(() => void sweep(), SWEEP_EVERY_MS);

async function stop(): Promise<void> {
  await Promise.all([stopEngine(), gradings.stop()]);
  await boss.stop({ graceful: true, wait: true, timeout: 5_000 }).catch(() => undefined);
  process.exit();
}

for (const signal of ["SIGTERM", "SIGINT", "SIGHUP", "disconnect"] as const) process.once(signal, () => void stop());
process.send?.("ready");
