import { gradePattern, parseGradeRequest } from "@/engine/grading";
import { highsSolver } from "@/solver/highs-solver";
import type { Verb } from "../verb";

export const gradeVerb: Verb = {
  name: "grade",
  summary: "takes a pattern; prints all counts in all sizes, and the resulting measurements",
  run: async (value) => {
    const parsed = parseGradeRequest(value);
    if (!parsed.ok) return parsed;
    const graded = gradePattern(parsed.document, await highsSolver());
    if (graded.status === "faults") return { ok: false, faults: graded.faults };
    if (graded.status === "infeasible") return { ok: true, output: graded, hasNoAnswer: true };
    const { grading, measurements, objective, status, bound } = graded;
    return { ok: true, output: { grading, measurements, objective, status, ...(bound ? { bound } : {}) } };
  },
};
