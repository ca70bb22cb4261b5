import { gaps } from "@/engine/gaps";
import type { Solver } from "@/engine/integer-program";
import type { CallDocument } from "@/engine/pattern";
import { reviseCall, type ReviseRequest } from "@/engine/revision";

/** What is handed to the engine's thread. */
export type EngineTask =
  { readonly kind: "gaps"; readonly call: CallDocument } | { readonly kind: "revise"; readonly request: ReviseRequest };

/** Has the engine do a task. @returns what it prints, null where it was stopped at its limit of time. */
export type Reckon = (task: EngineTask) => Promise<string | null>;

/** What the engine prints for a task; for a revision also the gaps of the same reports against it. */
export function runEngineTask(task: EngineTask, solver: Solver): string {
  switch (task.kind) {
    case "gaps":
      return JSON.stringify(gaps(task.call));
    case "revise": {
      const revision = reviseCall(task.request, solver);
      return JSON.stringify(
        revision.status === "revised"
          ? { ...revision, replayed: gaps({ ...task.request.call, pattern: revision.pattern }) }
          : revision,
      );
    }
  }
}
