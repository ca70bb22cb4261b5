import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { setTimeout as pause } from "node:timers/promises";
import { log } from "@/server/log";
import { nodeFlags } from "./own-programs";
import { StartError } from "./start-error";

const AGAIN_AFTER_MS = 2_000;

export interface KeptWorker {
  stop(): Promise<void>;
}

/** Runs the worker in a process of its own, and runs it again where it ended without being asked. */
export async function keepWorker(root: string): Promise<KeptWorker> {
  let stopping = false;
  let child = spawnWorker(root);
  const first = await Promise.race([once(child, "message"), once(child, "exit").then(() => null)]);
  if (first === null) throw new StartError("The worker did not start. The reason is printed above.");
  const revive = async (): Promise<void> => {
    for (;;) {
      if (child.exitCode === null && child.signalCode === null) await once(child, "exit");
      if (stopping) return;
      log.error("the worker ended unasked and is started again");
      await pause(AGAIN_AFTER_MS);
      if (stopping) return;
      child = spawnWorker(root);
    }
  };
  const kept = revive();
  return {
    stop: async () => {
      stopping = true;
      child.kill("SIGTERM");
      await kept;
    },
  };
}

function spawnWorker(root: string): ChildProcess {
  return spawn(process.execPath, nodeFlags("worker/main"), {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
}
