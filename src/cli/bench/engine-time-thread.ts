import { parentPort } from "node:worker_threads";
import type { CallDocument } from "@/engine/pattern";
import { analyseCall } from "@/engine/results";

/* Tells how long the engine alone takes over each call that it is sent, ms. */
parentPort?.on("message", (call: CallDocument) => {
  const began = performance.now();
  analyseCall(call);
  parentPort?.postMessage(performance.now() - began);
});
