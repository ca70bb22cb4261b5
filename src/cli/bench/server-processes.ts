import { readdirSync, readFileSync } from "node:fs";

interface Process {
  readonly pid: number;
  readonly parent: number;
  readonly name: string;
  /** Its own processor time, ticks. */
  readonly own: number;
  /** Of its children that have ended, ticks. */
  readonly ended: number;
}

/** Ticks a second in /proc, on every Linux that Node runs on. */
const TICKS = 100;

/**
 * Processor time so far of the web server and of the PostgreSQL that it started, ms. The worker is not counted.
 *
 * @param pid the process that serves the pages.
 */
export function serverMs(pid: number): number {
  const processes = allProcesses();
  const web = processes.find((each) => each.pid === pid);
  if (web === undefined) throw new Error(`there is no process ${pid}`);
  const postgres = descendants(processes, pid).filter(({ name }) => name === "postgres");
  const ticks = postgres.reduce((sum, { own, ended }) => sum + own + ended, web.own);
  return (ticks * 1000) / TICKS;
}

function descendants(processes: readonly Process[], pid: number): Process[] {
  const children = processes.filter(({ parent }) => parent === pid);
  return children.flatMap((child) => [child, ...descendants(processes, child.pid)]);
}

function allProcesses(): Process[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .flatMap((pid) => readStat(pid) ?? []);
}

function readStat(pid: string): Process | null {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    // The name stands in brackets and may hold spaces and brackets itself.
    const nameEnd = stat.lastIndexOf(")");
    const fields = stat
      .slice(nameEnd + 2)
      .split(" ")
      .map(Number);
    const field = (number: number) => fields[number - 3] ?? 0;
    return {
      pid: Number(pid),
      parent: field(4),
      name: stat.slice(stat.indexOf("(") + 1, nameEnd),
      own: field(14) + field(15),
      ended: field(16) + field(17),
    };
  } catch {
    // Ended meanwhile.
    return null;
  }
}
