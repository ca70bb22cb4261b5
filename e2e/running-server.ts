import { spawn } from "node:child_process";
import { once } from "node:events";

interface Given {
  readonly flags?: readonly string[];
  readonly settings: Readonly<Record<string, string>>;
}

export interface RunningServer {
  readonly address: string;
  /** Asks it to end, and waits. @returns its exit code. */
  stop(): Promise<number | null>;
}

const READY = /Sizewright is ready: (\S+)/;

/** Starts the production build as people do. @throws {Error} with what it printed, when it ends instead. */
export async function runServer({ flags = [], settings }: Given): Promise<RunningServer> {
  const child = spawn(process.execPath, ["dist/start/main.js", ...flags], {
    env: { ...process.env, HOST: "127.0.0.1", LOG_LEVEL: "error", NEXTAUTH_URL: "", NEXTAUTH_SECRET: "", ...settings },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const exited = once(child, "exit");
  let printed = "";
  const address = await new Promise<string>((resolve, reject) => {
    const read = (chunk: unknown) => {
      printed += String(chunk);
      const ready = READY.exec(printed)?.[1];
      if (ready !== undefined) resolve(ready);
    };
    child.stdout.on("data", read);
    child.stderr.on("data", read);
    child.once("exit", () => reject(new Error(printed.trim())));
  });
  const stop = async () => {
    child.kill("SIGTERM");
    await exited;
    return child.exitCode;
  };
  return { address, stop };
}
