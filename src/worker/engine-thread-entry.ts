import { parentPort } from "node:worker_threads";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import { highsSolver } from "@/solver/highs-solver";

const solver = await highsSolver();
parentPort?.on("message", (written: string) => {
  const task: EngineTask = JSON.parse(written);
  parentPort?.postMessage(runEngineTask(task, solver));
});
