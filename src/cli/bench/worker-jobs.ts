import { setTimeout as pause } from "node:timers/promises";
import { z } from "zod";

/** What the worker logs of an analysis that it has stored. */
const jobSchema = z.object({
  msg: z.literal("job done"),
  job: z.literal("analyse-call"),
  id: z.string(),
  ms: z.number(),
  time: z.number(),
});

/** Moments in ms since 1970, by the machine's one clock. */
export interface DoneJob {
  readonly callId: string;
  readonly begunAt: number;
  readonly doneAt: number;
  readonly ms: number;
}

const GIVE_UP_AFTER_MS = 120_000;
const LOOK_EVERY_MS = 2;

/** The worker's finished analyses, as its log tells of them. */
export class WorkerJobs {
  private done: DoneJob[] = [];

  readonly onLog = (line: string): void => {
    if (!line.startsWith("{")) return;
    const { success, data } = jobSchema.safeParse(JSON.parse(line));
    if (!success) return;
    const { id, ms, time } = data;
    this.done.push({ callId: id, ms, begunAt: time - ms, doneAt: time });
  };

  /** Forgets what was done so far, and does something of which so many jobs come. */
  async following(jobs: number, act: () => Promise<unknown>): Promise<readonly DoneJob[]> {
    this.done = [];
    await act();
    const giveUpAt = Date.now() + GIVE_UP_AFTER_MS;
    while (this.done.length < jobs) {
      if (Date.now() > giveUpAt) throw new Error(`the worker did ${this.done.length} of ${jobs} jobs`);
      await pause(LOOK_EVERY_MS);
    }
    return this.done;
  }
}
