import { gradeFrontier, gradePattern, parseGradeRequest } from "@/engine/grading";
import { highsSolver } from "@/solver/highs-solver";
import type { Verb } from "../verb";

export const gradeVerb: Verb = {
  name: "grade",
  summary: "takes a pattern; prints all counts in all sizes, and the resulting measurements",
  run: async (value) => {
    const parsed = parseGradeRequest(value);
    if (!parsed.ok) return parsed;
    const solver = await highsSolver();
    const { pattern, frontier } = parsed.document;
    const graded = frontier ? gradeFrontier(pattern, solver) : gradePattern(parsed.document, solver);
    if (graded.status === "faults") return { ok: false, faults: graded.faults };
    if (graded.status === "infeasible") return { ok: true, output: graded, hasNoAnswer: true };
    const { status, bound, ...answer } = graded;
    return { ok: true, output: { ...answer, status, ...(bound ? { bound } : {}) } };
  },
};
