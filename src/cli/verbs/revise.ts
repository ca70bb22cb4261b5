import { combinedCall, parseReviseRequest, reviseCall } from "@/engine/revision";
import { highsSolver } from "@/solver/highs-solver";
import type { Verb } from "../verb";

export const reviseVerb: Verb = {
  name: "revise",
  summary: "takes a call and accepted proposals; prints the revised pattern, its changes and the expected measurements",
  run: async (value) => {
    const parsed = parseReviseRequest(value);
    if (!parsed.ok) return parsed;
    const { call } = combinedCall(parsed.document.call);
    const revision = reviseCall({ ...parsed.document, call }, await highsSolver());
    switch (revision.status) {
      case "faults":
        return { ok: false, faults: revision.faults };
      case "infeasible":
        return { ok: true, output: revision, hasNoAnswer: true };
      case "revised":
        return { ok: true, output: { pattern: revision.pattern, changes: revision.changes, after: revision.after } };
    }
  },
};
