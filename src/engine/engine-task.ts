import { gaps } from "./gaps";
import { gradeChoices, type ChoicesRequest } from "./grading";
import type { Solver } from "./integer-program";
import { gradedCounts, own, type CallDocument } from "./pattern";
import { analyseCall } from "./results";
import { expectations, reviseCall, type MisworkedCount, type ReviseRequest } from "./revision";

/** What is handed to the engine's thread. */
export type EngineTask =
  | { readonly kind: "analyse"; readonly call: CallDocument }
  | { readonly kind: "revise"; readonly request: ReviseRequest }
  | { readonly kind: "grade"; readonly request: ChoicesRequest };

/** What the engine prints for a task; for a revision also the gaps of the same reports against it. */
export function runEngineTask(task: EngineTask, solver: Solver): string {
  switch (task.kind) {
    case "analyse":
      return JSON.stringify(analyseCall(task.call));
    case "grade":
      return JSON.stringify(gradeChoices(task.request, solver));
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
