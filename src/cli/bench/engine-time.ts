import { build } from "esbuild";
import { once } from "node:events";
import { resolve } from "node:path";
import { Worker } from "node:worker_threads";
import { z } from "zod";
import type { CallDocument } from "@/engine/pattern";

const ENTRY = "src/cli/bench/engine-time-thread.ts";
const BUILT = resolve("dist/bench/engine-time-thread.js");

export interface EngineTimer {
  /** How long the engine alone takes over a call, ms. */
  readonly msOf: (call: CallDocument) => Promise<number>;
  stop(): Promise<void>;
}

/** The engine in a thread as the worker's, of JavaScript as it is built for the worker. */
export async function engineTimer(): Promise<EngineTimer> {
  await build({
    ...{ entryPoints: [ENTRY], outfile: BUILT, bundle: true, platform: "node", format: "esm", target: "node20.19" },
    ...{ packages: "external", conditions: ["react-server"], logLevel: "warning" },
  });
  const thread = new Worker(BUILT);
  return {
    msOf: async (call) => {
      const answered = once(thread, "message");
      thread.postMessage(call);
      const [ms] = await answered;
      return z.number().parse(ms);
    },
    stop: async () => void (await thread.terminate()),
  };
}
