import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseApplicants } from "@/engine/pattern";
import { minCostAssignment, placeApplicants } from "@/engine/places";
import { bestByEnumeration } from "./best-by-enumeration";
import { applicant, applicantsDocument } from "../../factories/applicants";
import { boards } from "./boards";

const RUNS = 3000;

describe("places, against looking at every answer there is", () => {
  it("finds the best by every criterion, the order of the applicants too", () => {
    const ran = { boards: 0, faulty: 0, empty: 0, locked: 0, waiting: 0, short: 0, tied: 0 };
    fc.assert(
      fc.property(boards({ maxSizes: 3, max: 5 }), (document) => {
        const best = bestByEnumeration(document);
        const answer = placeApplicants(document);
        ran.boards += 1;
        expect(parseApplicants(document).ok).toBe(true);
        if (answer.status === "faults" || best === null) {
          // Only too many locks leave no answer.
          expect([answer.status, best]).toEqual(["faults", null]);
          ran.faulty += 1;
          return;
        }
        const sizes = new Map(answer.placed.map(({ applicant, size }) => [applicant, size]));
        expect(document.applicants.map(({ id }) => sizes.get(id) ?? null)).toEqual(best.sizes);
        expect(answer.objective).toMatchObject({ leastFilled: best.leastFilled, filled: best.filled });
        expect(answer.objective.misfit).toBeCloseTo(best.misfit, 9);
        if (answer.placed.length === 0) ran.empty += 1;
        if (document.applicants.some(({ locked }) => locked)) ran.locked += 1;
        if (answer.waiting.length > 0) ran.waiting += 1;
        if (answer.short.length > 0) ran.short += 1;
        if (best.isTied) ran.tied += 1;
      }),
      { numRuns: RUNS },
    );
    console.log("boards looked at whole", ran);
    expect(ran.boards).toBe(RUNS);
    expect(Math.min(...Object.values(ran))).toBeGreaterThan(RUNS / 50);
  }, 120_000);

  it("assigns rows at any whole costs, negative ones too, as an enumeration does", () => {
    let ran = 0;
    const problem = fc.integer({ min: 1, max: 4 }).chain((sizes) =>
      fc.record({
        places: fc.array(
          fc.nat(3).chain((capacity) => fc.record({ capacity: fc.constant(capacity), min: fc.nat(capacity) })),
          { minLength: sizes, maxLength: sizes },
        ),
        rows: fc.array(
          fc.array(fc.option(fc.integer({ min: -3, max: 4 }), { nil: Number.POSITIVE_INFINITY, freq: 4 }), {
            minLength: sizes,
            maxLength: sizes,
          }),
          { maxLength: 5 },
        ),
      }),
    );
    fc.assert(
      fc.property(problem, ({ places, rows }) => {
        const found = minCostAssignment({ sizes: places, costs: Float64Array.from(rows.flat()), slack: 0 });
        expect([...found]).toEqual(bestAssignment(places, rows));
        ran += 1;
      }),
      { numRuns: RUNS },
    );
    console.log("assignments looked at whole", ran);
    expect(ran).toBe(RUNS);
  }, 120_000);

  it("fills the minimum of the sizes that come first before that of others, and never fewer for it", () => {
    const ran = { problems: 0, changed: 0 };
    const problem = fc.integer({ min: 2, max: 4 }).chain((sizes) =>
      fc.record({
        places: fc.array(
          fc
            .nat(2)
            .chain((capacity) =>
              fc.record({ capacity: fc.constant(capacity), min: fc.nat(capacity), isFirst: fc.boolean() }),
            ),
          { minLength: sizes, maxLength: sizes },
        ),
        rows: fc.array(
          fc.array(fc.option(fc.integer({ min: -3, max: 4 }), { nil: Number.POSITIVE_INFINITY, freq: 3 }), {
            minLength: sizes,
            maxLength: sizes,
          }),
          { maxLength: 4 },
        ),
      }),
    );
    fc.assert(
      fc.property(problem, ({ places, rows }) => {
        const costs = Float64Array.from(rows.flat());
        const found = [...minCostAssignment({ sizes: places, costs, slack: 0 })];
        expect(found).toEqual(bestAssignment(places, rows));
        const alike = places.map(({ min, capacity }) => ({ min, capacity }));
        const without = [...minCostAssignment({ sizes: alike, costs, slack: 0 })];
        expect(minimumFilled(places, found)).toBe(minimumFilled(places, without));
        ran.problems += 1;
        if (without.some((size, row) => size !== found[row])) ran.changed += 1;
      }),
      { numRuns: RUNS },
    );
    console.log("assignments with sizes that come first", ran);
    expect(ran.problems).toBe(RUNS);
    expect(ran.changed).toBeGreaterThan(RUNS / 100);
  }, 120_000);

  it("places two people in the end sizes where neither end nor the middle can be filled whole", () => {
    const two = [applicant("near-small", 95), applicant("near-large", 102)];
    const least = { least: 1, wanted: 1 };
    const document = applicantsDocument({
      places: { small: least, medium: least, large: least },
      applicants: two,
    });
    const sizesOf = (answer: ReturnType<typeof placeApplicants>) =>
      answer.status === "faults" ? [] : answer.placed.map(({ size }) => size);
    // By hand: 95 is 1 ¼ half distances above S and 0.75 below M, 102 is 0.8 above M and 1.2 below L.
    expect(sizesOf(placeApplicants(document, { endsFirst: true }))).toEqual(["small", "large"]);
    expect(sizesOf(placeApplicants(document))).not.toEqual(["small", "large"]);
  });
});

function minimumFilled(places: readonly { readonly min: number }[], answer: readonly number[]): number {
  return places.reduce(
    (sum, { min }, size) => sum + Math.min(min, answer.filter((stands) => stands === size).length),
    0,
  );
}

/** Looks at every answer; of equal ones the one whose first differing row is placed, then stands in the earlier size. */
function bestAssignment(
  places: readonly { readonly min: number; readonly capacity: number; readonly isFirst?: boolean }[],
  rows: readonly (readonly number[])[],
): number[] {
  const answers = rows.reduce<number[][]>(
    (all, costs) =>
      all.flatMap((head) =>
        [-1, ...costs.keys()].filter((index) => costs[index] !== Infinity).map((index) => [...head, index]),
      ),
    [[]],
  );
  const judged = answers.flatMap((answer) => {
    const loads = places.map((_, size) => answer.filter((index) => index === size).length);
    if (loads.some((load, size) => load > (places[size]?.capacity ?? 0))) return [];
    const minFilled = loads.reduce((sum, load, size) => sum + Math.min(load, places[size]?.min ?? 0), 0);
    const firstFilled = loads.reduce(
      (sum, load, size) => sum + (places[size]?.isFirst === true ? Math.min(load, places[size].min) : 0),
      0,
    );
    const cost = answer.reduce((sum, index, row) => sum + (index < 0 ? 0 : (rows[row]?.[index] ?? 0)), 0);
    const waits = answer.map((index) => (index < 0 ? 1 : 0));
    const filled = answer.filter((index) => index >= 0).length;
    return [{ answer, key: [-minFilled, -firstFilled, -filled, cost, ...waits, ...answer] }];
  });
  const [best] = judged.toSorted((one, other) => {
    const position = one.key.findIndex((value, index) => value !== other.key[index]);
    return position < 0 ? 0 : (one.key[position] ?? 0) - (other.key[position] ?? 0);
  });
  return best?.answer ?? [];
}
