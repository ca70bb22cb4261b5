import { gaps } from "@/engine/gaps";
import type { Solver } from "@/engine/integer-program";
import { gradedCounts, own, type CallDocument } from "@/engine/pattern";
import { reviseCall, type MisworkedCount, type ReviseRequest } from "@/engine/revision";

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
      if (revision.status !== "revised") return JSON.stringify(revision);
      const { replayed, ...plan } = revision;
      const misworked = misworkedCounts(task.request.call, replayed);
      return JSON.stringify({ ...plan, misworked, replayed: gaps(replayed) });
    }
  }
}

/** By how much the counts that a replay starts from differ from what the reports say, once a size and count. */
function misworkedCounts({ pattern, testers }: CallDocument, replayed: CallDocument): MisworkedCount[] {
  const found = new Map<string, MisworkedCount>();
  replayed.testers.forEach(({ size, worked = {} }, at) => {
    const said = { ...gradedCounts(pattern, size), ...testers[at]?.worked };
    for (const [count, really] of Object.entries(worked)) {
      const amount = really - (own(said, count) ?? really);
      if (amount !== 0) found.set(`${size} ${count}`, { count, size, amount });
    }
  });
  return [...found.values()];
}
