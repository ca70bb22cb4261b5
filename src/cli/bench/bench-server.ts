import { spawn, spawnSync, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { z } from "zod";

const READY = /Sizewright is ready: (\S+)/;
const SECRET = "a secret of the bench, for nothing else at all";

export interface BenchServer {
  readonly address: string;
  /** Of the process that serves the pages. */
  readonly pid: number;
  stop(): Promise<void>;
}

const hasTaskset = spawnSync("taskset", ["--version"]).status === 0;

/** Keeps this process off the server's core, where the machine lets it. @returns whether it does. */
export function pinClient(): boolean {
  return hasTaskset && spawnSync("taskset", ["-acp", "1", String(process.pid)]).status === 0;
}

interface ServerSettings {
  /** Keeps it on the first core, where the machine lets it; else it has all of them. */
  readonly isPinned?: boolean;
  /** Gets each line that it logs. */
  readonly onLog?: (line: string) => void;
}

/** Starts the production build over a folder of its own. */
export async function startServer(
  folder: string,
  { isPinned = true, onLog }: ServerSettings = {},
): Promise<BenchServer> {
  const [, ...flags] = startScript().split(" ");
  const [command, ...before] = isPinned && hasTaskset ? ["taskset", "-c", "0", process.execPath] : [process.execPath];
  const child = spawn(command ?? process.execPath, [...before, ...flags], {
    env: {
      ...process.env,
      ...{ HOST: "127.0.0.1", PORT: "0", SIZEWRIGHT_FOLDER: folder, LOG_LEVEL: onLog ? "info" : "error" },
      ...{ DATABASE_URL: "", NEXTAUTH_URL: "", NEXTAUTH_SECRET: SECRET },
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  if (onLog) createInterface({ input: child.stdout }).on("line", onLog);
  const address = await printed(child, READY);
  const stop = async () => {
    child.kill("SIGTERM");
    await once(child, "exit");
  };
  // `taskset` becomes what it starts, so its process is the server's.
  if (child.pid === undefined) throw new Error("the server did not start");
  return { address, pid: child.pid, stop };
}

/** As `npm start` starts it. */
function startScript(): string {
  const { scripts } = z
    .object({ scripts: z.object({ start: z.string() }) })
    .parse(JSON.parse(readFileSync("package.json", "utf8")));
  return scripts.start;
}

const seededSchema = z.object({
  callId: z.string(),
  testerId: z.string(),
  applicationId: z.string(),
  applicationLink: z.string(),
  cookies: z.object({ designer: z.string(), tester: z.string(), visitor: z.string(), newcomer: z.string() }),
});

export type Seeded = z.infer<typeof seededSchema>;

/** Seeds a call in a process of its own, for the features' code loads only under its own condition. */
export async function seedCall(folder: string, address: string, testers: number): Promise<Seeded> {
  return seededSchema.parse(await seed({ folder, address, script: "prisma/seed-large-call.ts", size: testers }));
}

interface Seeding {
  readonly folder: string;
  readonly address: string;
  readonly script: string;
  readonly size?: number;
}

/** Runs a script of `prisma/` against a server's database. @returns what it says that it seeded. */
export async function seed({ folder, address, script, size }: Seeding): Promise<unknown> {
  const flags = [
    "--conditions",
    "react-server",
    "--import",
    "tsx",
    script,
    ...(size === undefined ? [] : [String(size)]),
  ];
  const child = spawn(process.execPath, flags, {
    env: {
      ...process.env,
      ...{ NEXTAUTH_SECRET: SECRET, NEXTAUTH_URL: address },
      DATABASE_URL: readFileSync(join(folder, "database-url"), "utf8").trim(),
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  return JSON.parse(await printed(child, /^seeded: (.+)$/m));
}

/** What a process prints that the expression looks for. @throws {Error} where it ends without. */
async function printed(child: ChildProcess, expression: RegExp): Promise<string> {
  let text = "";
  return await new Promise((resolve, reject) => {
    child.stdout?.on("data", (chunk) => {
      text += String(chunk);
      const found = expression.exec(text)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once("exit", () => reject(new Error(`ended too early: ${text.trim()}`)));
  });
}
