import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { chmodSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const READY = /Sizewright is ready: (\S+)/;
const SECRET = "a secret of the bench, for nothing else at all";

export interface BenchServer {
  readonly address: string;
  /** Runs a script of `prisma/` against the server's database. @returns what it printed behind `laid:`. */
  readonly seed: (script: string) => Promise<unknown>;
}

/** Runs a bench against the production build, served over a database of its own that is gone afterwards. */
export async function withBenchServer<Result>(run: (server: BenchServer) => Promise<Result>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-bench-"));
  chmodSync(folder, 0o755);
  const child = spawn(process.execPath, ["--import", "tsx", "src/start/main.ts"], {
    env: {
      ...process.env,
      ...{ HOST: "127.0.0.1", PORT: "0", SIZEWRIGHT_FOLDER: folder, LOG_LEVEL: "error" },
      ...{ DATABASE_URL: "", NEXTAUTH_URL: "", NEXTAUTH_SECRET: SECRET },
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  try {
    const address = await printed(child, READY);
    return await run({ address, seed: (script) => seed(script, { folder, address }) });
  } finally {
    if (child.exitCode === null && child.kill("SIGTERM")) await once(child, "exit");
    rmSync(folder, { recursive: true, force: true });
  }
}

/** In a process of its own, for the features' code loads only under its own condition. */
async function seed(script: string, { folder, address }: { folder: string; address: string }): Promise<unknown> {
  const child = spawn(process.execPath, ["--conditions", "react-server", "--import", "tsx", script], {
    env: {
      ...process.env,
      ...{ NEXTAUTH_SECRET: SECRET, NEXTAUTH_URL: address },
      DATABASE_URL: readFileSync(join(folder, "database-url"), "utf8").trim(),
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  return JSON.parse(await printed(child, /^laid: (.+)$/m));
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
