import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { z } from "zod";
import { log } from "@/server/log";
import { stopLeftovers } from "./postgres-leftovers";
import { runPostgres, type PostgresToRun, type RunningPostgres } from "./run-postgres";

const AGAIN_AFTER_MS = 2_000;

const portSchema = z.coerce.number().int().min(1).max(65_535);

interface PostgresToKeep extends Omit<PostgresToRun, "port"> {
  /** Keeps the port over stops and starts. */
  readonly portFile: string;
}

export interface KeptPostgres {
  readonly url: string;
  stop(): Promise<void>;
}

/** Runs the server, and runs it again where it ended without being asked: the pages recover by themselves then. */
export async function keepRunning(run: PostgresToKeep): Promise<KeptPostgres> {
  let stopping = false;
  let running = await runAtItsPort(run);
  const revive = async (): Promise<void> => {
    for (;;) {
      await running.ended;
      if (stopping) return;
      log.error("PostgreSQL ended unasked and is started again");
      try {
        running = await runAtItsPort(run);
        // Asked to stop while it was being started.
        if (stopping) await running.stop();
      } catch (error) {
        log.error(error, "PostgreSQL could not be started again yet");
        await pause(AGAIN_AFTER_MS);
      }
    }
  };
  const kept = revive();
  return {
    url: running.url,
    stop: async () => {
      stopping = true;
      await running.stop();
      await kept;
    },
  };
}

async function runAtItsPort({ portFile, ...run }: PostgresToKeep): Promise<RunningPostgres> {
  await stopLeftovers(run.data);
  run.signal?.throwIfAborted();
  const running = await runPostgres({ ...run, port: storedPort(portFile) });
  writeFileSync(portFile, `${running.port}\n`);
  return running;
}

/** The port of the last start; none where the file is absent or was cut short by a killed one. */
function storedPort(portFile: string): number | undefined {
  if (!existsSync(portFile)) return undefined;
  return portSchema.safeParse(readFileSync(portFile, "utf8")).data;
}
