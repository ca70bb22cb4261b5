import type { CallDocument } from "@/engine/pattern";
import { analyseCall } from "@/engine/results";

/**
 * What pages read of a call, as the worker computes and the database gives it back.
 *
 * @param called names of testers by id; the others go by their ids.
 */
export function resultsOf(document: CallDocument, called: Readonly<Record<string, string>> = {}) {
  const results = analyseCall(document);
  const names = new Map(document.testers.map(({ id }) => [id, called[id] ?? id]));
  return {
    ...results,
    pattern: document.pattern,
    names,
    testers: results.testers.map((row) => ({ ...row, name: names.get(row.tester) ?? row.tester })),
  };
}
