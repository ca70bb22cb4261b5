import loadGlpk, { type GLPK, type LP } from "glpk.js/node";
import type { Solver } from "@/engine/integer-program";

/** GLPK behind the same seam as HiGHS, to compare with. @param secondsAtMost it stops then and answers what it has. */
export async function glpkSolver(secondsAtMost: number): Promise<Solver> {
  const glpk = await loadGlpk();
  return (lpText) => {
    const { result } = glpk.solve(readProgram(glpk, lpText), {
      mipgap: 0,
      tmlim: secondsAtMost,
      msglev: glpk.GLP_MSG_OFF,
    });
    return { status: statusWord(glpk, result.status), values: new Map(Object.entries(result.vars)) };
  };
}

function statusWord(glpk: GLPK, status: number): string {
  if (status === glpk.GLP_OPT) return "Optimal";
  return status === glpk.GLP_NOFEAS || status === glpk.GLP_INFEAS ? "Infeasible" : "Time limit reached";
}

/** Reads what `writeLp` writes, and no other LP text. */
function readProgram(glpk: GLPK, lpText: string): LP {
  const [head = "", rest = ""] = lpText.split("Subject To\n");
  const [rows = "", tail = ""] = rest.split("Bounds\n");
  const kinds = { "<=": glpk.GLP_UP, ">=": glpk.GLP_LO, "=": glpk.GLP_FX };
  return {
    name: "grading",
    objective: { direction: glpk.GLP_MIN, name: "obj", vars: terms(head.slice(head.indexOf(":") + 1)) },
    subjectTo: rows
      .split(/\n(?= c\d+:)/)
      .filter((row) => row.trim() !== "")
      .map((row, index) => {
        const [, sum = "", relation = "=", right = "0"] = /:([\s\S]*?)\s(<=|>=|=)\s(\S+)/.exec(row) ?? [];
        const bound = Number(right);
        const type = kinds[relation as keyof typeof kinds];
        return { name: `c${index}`, vars: terms(sum), bnds: { type, ub: bound, lb: bound } };
      }),
    generals: tail.includes("General") ? (/General\n([\s\S]*)End/.exec(tail)?.[1] ?? "").trim().split(/\s+/) : [],
  };
}

function terms(sum: string): { name: string; coef: number }[] {
  return [...sum.matchAll(/([+-])\s(\S+)\s(x\d+)/g)].map(([, sign, weight, name]) => ({
    name: name ?? "",
    coef: (sign === "-" ? -1 : 1) * Number(weight),
  }));
}
