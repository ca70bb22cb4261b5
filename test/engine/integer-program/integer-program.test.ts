import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { highsSolver } from "@/solver/highs-solver";
import { solveIntegerProgram, writeLp, type IntegerProgram, type Solver } from "@/engine/integer-program";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

describe("an integer program", () => {
  it("is written with one term per variable, exact numbers, and names that are no keywords of a solver", () => {
    const text = writeLp({
      whole: [true, false],
      constraints: [
        {
          sum: [
            { variable: 0, weight: 2 / 3 },
            { variable: 1, weight: -1 },
            { variable: 0, weight: 1 },
          ],
          relation: ">=",
          right: 0.1,
        },
      ],
      objective: [{ variable: 1, weight: 1 }],
    });
    expect(text).toContain(`c0: + ${2 / 3 + 1} x0 - 1 x1 >= 0.1`);
    expect(text).toContain("General\n x0\nEnd");
  });

  it("refuses a number that is not finite", () => {
    const program: IntegerProgram = {
      whole: [true],
      constraints: [],
      objective: [{ variable: 0, weight: Number.NaN }],
    };
    expect(() => writeLp(program)).toThrow(RangeError);
  });

  it("says that there is no answer, and does not believe one that breaks a constraint", () => {
    const one = [{ variable: 0, weight: 1 }];
    const program: IntegerProgram = {
      whole: [true],
      constraints: [{ sum: one, relation: ">=", right: 2 }],
      objective: one,
    };
    const clashing = {
      ...program,
      constraints: [...program.constraints, { sum: one, relation: "<=" as const, right: 1 }],
    };
    expect(solveIntegerProgram(clashing, solver)).toEqual({ status: "infeasible" });
    const lying: Solver = () => ({ status: "Optimal", values: new Map([["x0", 0]]) });
    expect(solveIntegerProgram(program, lying).status).toBe("unproven");
    expect(solveIntegerProgram(program, solver)).toMatchObject({ status: "optimal", values: [2], objective: 2 });
  });

  it("finds the same minimum as an exhaustive search of small programs", () => {
    let ran = 0;
    const small = fc.record({
      weights: fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })),
      costs: fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })),
      least: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(small, ({ weights, costs, least }) => {
        const sum = weights.map((weight, variable) => ({ variable, weight }));
        const objective = costs.map((weight, variable) => ({ variable, weight }));
        const solution = solveIntegerProgram(
          { whole: [true, true], constraints: [{ sum, relation: ">=", right: least }], objective },
          solver,
        );
        let best = Number.POSITIVE_INFINITY;
        for (let x = 0; x <= 40; x += 1) {
          for (let y = 0; y <= 40; y += 1) {
            if (weights[0] * x + weights[1] * y >= least) best = Math.min(best, costs[0] * x + costs[1] * y);
          }
        }
        expect(solution).toMatchObject({ status: "optimal", objective: best });
        ran += 1;
      }),
      { numRuns: 30 },
    );
    expect(ran).toBe(30);
  });
});
