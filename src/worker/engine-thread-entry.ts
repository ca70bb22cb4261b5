import { LRUCache } from "lru-cache";
import { parentPort } from "node:worker_threads";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import type { PatternDocument } from "@/engine/pattern";
import { highsSolver } from "@/solver/highs-solver";

const KNOWN_PATTERNS = 20;

const solver = await highsSolver();
const patterns = new LRUCache<string, PatternDocument>({ max: KNOWN_PATTERNS });
parentPort?.on("message", (written: string) => {
  const task: EngineTask = JSON.parse(written);
  parentPort?.postMessage(runEngineTask(task.kind === "analyse" ? ofKnownPattern(task) : task, solver));
});

/** With the pattern object of the analysis before, where it is the same, so that what the engine works out of a pattern alone is known. */
function ofKnownPattern(task: Extract<EngineTask, { kind: "analyse" }>): EngineTask {
  const { pattern: read } = task.call;
  const text = JSON.stringify(read);
  const pattern = patterns.get(text) ?? read;
  patterns.set(text, pattern);
  return { ...task, call: { ...task.call, pattern } };
}
