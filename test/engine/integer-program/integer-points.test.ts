import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { integerPoints, type Constraint } from "@/engine/integer-program";

const RUNS = 300;
const MOST = 6;

const weighted = fc.record({
  weights: fc.tuple(...[0, 1, 2].map(() => fc.constantFrom(-2, -1, 0, 0.5, 1, 3))),
  relation: fc.constantFrom<Constraint["relation"]>("<=", ">=", "="),
  right: fc.integer({ min: -4, max: 12 }),
});

function constraint({ weights, relation, right }: { weights: number[] } & Omit<Constraint, "sum">): Constraint {
  return { sum: weights.map((weight, variable) => ({ variable, weight })), relation, right };
}

/** Each of three variables at most 6. */
const BOX = [0, 1, 2].map((variable): Constraint => ({
  sum: [{ variable, weight: 1 }],
  relation: "<=",
  right: MOST,
}));

function keeps(point: readonly number[], { sum, relation, right }: Constraint): boolean {
  const left = sum.reduce((total, { variable, weight }) => total + weight * (point[variable] ?? 0), 0);
  if (relation === "<=") return left <= right;
  return relation === ">=" ? left >= right : left === right;
}

describe("the whole points of some constraints", () => {
  it("are those that are left of all points of a box, tried one by one", () => {
    let ran = { some: 0, none: 0 };
    fc.assert(
      fc.property(fc.array(weighted, { maxLength: 3 }), (drawn) => {
        const constraints = [...BOX, ...drawn.map(constraint)];
        const side = Array.from({ length: MOST + 1 }, (_, number) => number);
        const all = side.flatMap((x) => side.flatMap((y) => side.map((z) => [x, y, z])));
        const left = all.filter((point) => constraints.every((one) => keeps(point, one)));
        const found = integerPoints({ variables: 3, constraints, maxPoints: all.length });
        expect(new Set(found?.map(String))).toEqual(new Set(left.map(String)));
        expect(found).toHaveLength(left.length);
        ran = left.length > 0 ? { ...ran, some: ran.some + 1 } : { ...ran, none: ran.none + 1 };
      }),
      { numRuns: RUNS },
    );
    expect(ran.some + ran.none).toBe(RUNS);
    expect(Math.min(ran.some, ran.none)).toBeGreaterThan(RUNS / 10);
  });

  it("are not returned if there are too many, if they are unbounded, or if the search has too many dead ends", () => {
    expect(integerPoints({ variables: 3, constraints: BOX, maxPoints: 343 })).toHaveLength(343);
    expect(integerPoints({ variables: 3, constraints: BOX, maxPoints: 342 })).toBeNull();
    const [first = { sum: [], relation: "<=", right: 0 }] = BOX;
    expect(integerPoints({ variables: 1, constraints: [{ ...first, relation: ">=" }], maxPoints: 9 })).toBeNull();
    // Sums of even numbers are never odd, which bounds alone do not show.
    const even = Array.from({ length: 12 }, (_, variable) => ({ variable, weight: 2 }));
    const odd: Constraint = { sum: even, relation: "=", right: 25 };
    expect(integerPoints({ variables: 12, constraints: [odd], maxPoints: 9 })).toBeNull();
  });

  it("are none if a constraint without variables is violated", () => {
    const empty: Constraint = { sum: [], relation: ">=", right: 1 };
    expect(integerPoints({ variables: 1, constraints: [...BOX.slice(0, 1), empty], maxPoints: 9 })).toEqual([]);
  });
});
