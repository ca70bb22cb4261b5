import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, readlinkSync, realpathSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

const FAST_MS = 20_000;

/**
 * Stops what a killed start left running on a data folder, and takes its `postmaster.pid` away once nothing runs there.
 * PostgreSQL would refuse the folder when that file's process id belongs to somebody else by now; while any of its own
 * processes lives, the file is what keeps a second server off the data, so it is never removed before.
 */
export async function stopLeftovers(dataFolder: string): Promise<void> {
  const pidFile = join(dataFolder, "postmaster.pid");
  if (!existsSync(pidFile)) return;
  const pid = Number(readFileSync(pidFile, "utf8").split("\n", 1)[0]);
  if (runsOn(dataFolder).includes(pid)) {
    // SIGINT is PostgreSQL's fast stop; SIGQUIT its immediate one, after which the next start recovers from the log.
    process.kill(pid, "SIGINT");
    if (!(await emptied(dataFolder, FAST_MS))) process.kill(pid, "SIGQUIT");
  }
  if (await emptied(dataFolder, FAST_MS)) rmSync(pidFile, { force: true });
}

async function emptied(dataFolder: string, withinMs: number): Promise<boolean> {
  for (let waitedMs = 0; waitedMs < withinMs; waitedMs += 100) {
    if (runsOn(dataFolder).length === 0) return true;
    await pause(100);
  }
  return false;
}

/** Every process of PostgreSQL works in its data folder, which tells ours from any other process of that id. */
function runsOn(dataFolder: string): number[] {
  if (!existsSync("/proc/self/cwd")) return namedIn(dataFolder);
  const folder = realpathSync(dataFolder);
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name) && workingFolder(name) === folder)
    .map(Number);
}

function workingFolder(pid: string): string | undefined {
  try {
    return readlinkSync(`/proc/${pid}/cwd`);
  } catch {
    // Gone meanwhile, or another user's.
    return undefined;
  }
}

/** Where there is no /proc: the servers whose command line names the folder. */
function namedIn(dataFolder: string): number[] {
  const listed = spawnSync("ps", ["-axo", "pid=,command="], { encoding: "utf8" });
  const lines = listed.status === 0 ? listed.stdout.split("\n") : [];
  return lines
    .filter((line) => line.includes("postgres") && line.includes(dataFolder))
    .map((line) => parseInt(line, 10));
}
