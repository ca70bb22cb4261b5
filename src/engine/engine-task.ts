import { gaps, learnFromCalls, shownHabits, type Cell } from "./gaps";
import { gradeChoices } from "./grading";
import type { Solver } from "./integer-program";
import { gradedCounts, ownValue, type CallDocument, type EarlierCall, type PatternDocument } from "./pattern";
import { analyseCall, printResults, withoutUnusable } from "./results";
import { expectations, reviseCall, type InstructionError, type ReviseRequest } from "./revision";

/** A task for the engine's thread. */
export type EngineTask =
  | { readonly kind: "analyse"; readonly call: CallDocument }
  | { readonly kind: "learn"; readonly calls: readonly EarlierCall[] }
  | { readonly kind: "habits"; readonly call: EarlierCall; readonly testers: readonly string[] }
  | { readonly kind: "revise"; readonly request: ReviseRequest }
  | {
      readonly kind: "expect";
      readonly call: CallDocument;
      readonly cells: readonly Cell[];
      readonly revised: PatternDocument;
    }
  | { readonly kind: "grade"; readonly pattern: PatternDocument };

/** Runs a task and prints its result as JSON, an analysis as `printResults`; of earlier calls what they teach, or null, and what one shows of testers as pairs of id and habits; for a revision also the gaps of the same reports against it. */
export function runEngineTask(task: EngineTask, solver: Solver): string {
  switch (task.kind) {
    case "analyse":
      return printResults(analyseCall(task.call));
    case "learn":
      return JSON.stringify(learnFromCalls(task.calls.map((call) => withoutUnusable(call).usable)));
    case "habits":
      return JSON.stringify([...shownHabits(withoutUnusable(task.call).usable, new Set(task.testers))]);
    case "grade":
      return JSON.stringify(gradeChoices(task.pattern, solver));
    case "expect": {
      const { usable: call } = withoutUnusable(task.call);
      return JSON.stringify({ status: "expected", expectations: expectations({ ...task, call }) });
    }
    case "revise": {
      const { usable: call } = withoutUnusable(task.request.call);
      const revision = reviseCall({ ...task.request, call }, solver);
      if (revision.status !== "revised") return JSON.stringify(revision);
      const { replayed, ...plan } = revision;
      const found = instructionErrors(call, replayed);
      return JSON.stringify({ ...plan, instructionErrors: found, replayed: gaps(replayed) });
    }
  }
}

/** Differences between the counts used in a replay and those in the reports, one per size and count. */
function instructionErrors({ pattern, testers }: CallDocument, replayed: CallDocument): InstructionError[] {
  const found = new Map<string, InstructionError>();
  replayed.testers.forEach(({ size, worked = {} }, index) => {
    const reported = { ...gradedCounts(pattern, size), ...testers[index]?.worked };
    for (const [count, really] of Object.entries(worked)) {
      const amount = really - (ownValue(reported, count) ?? really);
      if (amount !== 0) found.set(`${size} ${count}`, { count, size, amount });
    }
  });
  return [...found.values()];
}
