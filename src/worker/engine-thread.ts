import { Worker } from "node:worker_threads";
import type { EngineTask } from "@/engine/engine-task";
import { TaskInterrupted, type RunTask } from "@/server/run-task";

/** Twenty thousand testers take less than a minute. */
const LONGEST_MS = 180_000;

/** Built, the thread's program stands beside this one; while developing, a loader of TypeScript comes first. */
const isBuilt = import.meta.url.endsWith(".js");
const ENTRY = new URL(isBuilt ? "./engine-thread-entry.js" : "./engine-thread-loader.mjs", import.meta.url);

export interface EngineThread {
  readonly run: RunTask<EngineTask>;
  stop(): Promise<void>;
}

/**
 * The engine in a thread of its own, one task after the other: it keeps nothing else waiting.
 *
 * @param longestMs a task that takes longer, or whose signal says so, is stopped with its thread; the next one gets a new thread.
 */
export function engineThread(longestMs = LONGEST_MS): EngineThread {
  let thread: Worker | undefined;
  let last: Promise<unknown> = Promise.resolve();
  let isEnding = false;
  const end = async () => {
    const ended = thread;
    thread = undefined;
    await ended?.terminate();
  };
  const runTask = async (task: EngineTask, signal: AbortSignal | undefined): Promise<string | null> => {
    if (signal?.aborted) return null;
    if (isEnding) throw new TaskInterrupted("the engine's thread is ending");
    thread ??= new Worker(ENTRY);
    const answer = await answerOf(thread, task, { longestMs, signal });
    if (answer.status === "printed") return answer.text;
    if (isEnding) throw new TaskInterrupted("the engine's thread is ending");
    await end();
    if (answer.status === "stopped") return null;
    throw new Error("the engine's thread failed", { cause: answer.error });
  };
  return {
    run: (task, signal) => {
      const done = last.then(() => runTask(task, signal));
      last = done.catch(() => undefined);
      return done;
    },
    stop: async () => {
      isEnding = true;
      await end();
    },
  };
}

type Answer =
  | { readonly status: "printed"; readonly text: string }
  | { readonly status: "stopped" }
  | { readonly status: "failed"; readonly error: unknown };

function answerOf(
  thread: Worker,
  task: EngineTask,
  { longestMs, signal }: { longestMs: number; signal: AbortSignal | undefined },
): Promise<Answer> {
  return new Promise((resolve) => {
    const settle = (answer: Answer) => {
      clearTimeout(late);
      signal?.removeEventListener("abort", onStop);
      thread.off("message", onMessage).off("error", onError).off("exit", onExit);
      resolve(answer);
    };
    const onMessage = (text: string) => settle({ status: "printed", text });
    const onError = (error: unknown) => settle({ status: "failed", error });
    const onExit = () => settle({ status: "failed", error: "it ended" });
    const onStop = () => settle({ status: "stopped" });
    const late = setTimeout(onStop, longestMs);
    signal?.addEventListener("abort", onStop);
    thread.on("message", onMessage).on("error", onError).on("exit", onExit);
    // A text is handed over several times faster than a document's objects are copied.
    thread.postMessage(JSON.stringify(task));
  });
}
