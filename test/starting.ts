import { execFileSync, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { cpSync, mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { freePort } from "../src/start/free-port";

/** All that a start needs besides its packages. */
const BUILT = [".next", "dist", "prisma/migrations", "public", "package.json", "next.config.ts"];
const USER = "sizewright-ci";

export interface Person {
  readonly name: string;
  readonly isRoot: boolean;
  /** Absent: whoever runs this. */
  readonly ids?: { readonly uid: number; readonly gid: number };
  readonly home: string;
}

export interface Start {
  readonly person: Person;
  readonly root: string;
  readonly flags?: readonly string[];
  readonly settings?: Readonly<Record<string, string>>;
}

/** Where we are root: an ordinary user, who is made, and root; else only ourselves. */
export function people(): readonly Person[] {
  const home = process.env.HOME ?? "/";
  if (process.getuid?.() !== 0) return [{ name: "an ordinary user", isRoot: false, home }];
  if (spawnSync("id", [USER]).status !== 0) execFileSync("useradd", ["--create-home", USER]);
  const id = (flag: string) => Number(execFileSync("id", [flag, USER], { encoding: "utf8" }));
  return [
    { name: "an ordinary user", isRoot: false, ids: { uid: id("-u"), gid: id("-g") }, home: `/home/${USER}` },
    { name: "root", isRoot: true, home },
  ];
}

/** The build and its packages in another folder, as that person's. */
export function copyBuild(root: string, { ids }: Person): void {
  mkdirSync(root, { recursive: true });
  const isNeeded = (file: string) => !/(^|\/)\.next\/(cache|dev)(\/|$)/.test(file);
  for (const path of BUILT) cpSync(path, join(root, path), { recursive: true, filter: isNeeded });
  if (ids !== undefined) execFileSync("chown", ["-R", `${ids.uid}:${ids.gid}`, dirname(root)]);
  // Linked where the disk is the same, which takes seconds; links share their owner, so these are not the person's.
  const packages = join(root, "node_modules");
  if (spawnSync("cp", ["-al", "node_modules", packages]).status === 0) return;
  cpSync("node_modules", packages, { recursive: true, verbatimSymlinks: true });
}

async function launch({ person, root, flags = [], settings = {} }: Start) {
  const port = await freePort();
  const child = spawn(process.execPath, ["dist/start/main.js", ...flags], {
    ...person.ids,
    cwd: root,
    // None of our own settings: they would be another start.
    env: {
      ...{ PATH: process.env.PATH, HOME: person.home, NODE_ENV: "production" },
      ...{ HOST: "127.0.0.1", PORT: String(port), LOG_LEVEL: "error", ...settings },
    },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const exited = once(child, "exit");
  let text = "";
  const ready = new Promise<void>((resolve) => {
    const read = (chunk: unknown) => {
      text += String(chunk);
      if (text.includes("Sizewright is ready: ")) resolve();
    };
    for (const stream of [child.stdout, child.stderr]) stream.on("data", read);
  });
  await Promise.race([ready, exited]);
  const stop = async () => {
    child.kill("SIGTERM");
    await exited;
    return child.exitCode;
  };
  return { address: `http://127.0.0.1:${port}`, isRunning: child.exitCode === null, printed: () => text.trim(), stop };
}

/** Starts, does something with the address that answers, and stops. @throws {Error} with what was printed. */
export async function started(start: Start, visit: (address: string) => Promise<void>): Promise<void> {
  const { address, isRunning, printed, stop } = await launch(start);
  try {
    if (!isRunning) throw new Error(`It did not start, and printed:\n${printed()}`);
    await visit(address);
  } catch (error) {
    await stop();
    throw error;
  }
  const code = await stop();
  if (code !== 0) throw new Error(`It stopped with ${code}, and printed:\n${printed()}`);
}

/** A start that has to end by itself. */
export async function refusedStart(start: Start): Promise<{ readonly code: number | null; readonly printed: string }> {
  const { printed, stop } = await launch(start);
  return { code: await stop(), printed: printed() };
}
