import { beforeAll, describe, expect, it } from "vitest";
import { gradePattern, relaxations, type GradeOutcome } from "@/engine/grading";
import type { Solver } from "@/engine/integer-program";
import type { PatternDocument } from "@/engine/pattern";
import { highsSolver } from "@/solver/highs-solver";
import { count, oneSize } from "../../factories/one-size";
import { patternDocument } from "../../factories/pattern";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

function graded(outcome: GradeOutcome) {
  if (outcome.status !== "optimal") throw new Error(JSON.stringify(outcome));
  return outcome;
}

describe("a pattern without its grading", () => {
  it("gets the counts that come nearest to the targets, in whole stitches", () => {
    // (90 + 10 − 2 × 1) ÷ 2 = 49 cm, at 2 stitches to the cm 98; (110 + 10 − 2) ÷ 2 = 59 cm, 118.
    const { grading, measurements, objective } = graded(
      gradePattern(
        { pattern: patternDocument({ counts: [count("width")], measurements: [bust()], grading: undefined }) },
        solver,
      ),
    );
    expect(grading).toEqual({ width: { small: 98, large: 118 } });
    expect(measurements).toMatchObject([
      { measurement: "bust", size: "small", targetCm: 100, cm: 100, deviation: 0 },
      { measurement: "bust", size: "large", targetCm: 120, cm: 120, deviation: 0 },
    ]);
    expect(objective).toEqual({ beyond: 0, deviation: 0, unevenness: 0, sum: 216 });
  });

  it("meets sums across pieces: 50, 60 and 50 stitches join as 160, a multiple of 10 (common practice, no source)", () => {
    const joined = count("yoke", { repeat: { of: 10, plus: 0 } });
    const pattern = oneSize([joined, count("front"), count("back")], {
      targets: { front: 30, back: 25 },
      ties: [
        {
          count: "yoke",
          equals: [
            { times: 1, count: "front" },
            { times: 2, count: "back" },
          ],
        },
      ],
    });
    expect(graded(gradePattern({ pattern }, solver)).grading).toEqual({
      yoke: { one: 160 },
      front: { one: 60 },
      back: { one: 50 },
    });
  });

  it("keeps locked counts, and stays close to a tested grading if the targets allow it", () => {
    const pattern = oneSize([count("front", { locked: { one: 61 } }), count("back")], {
      targets: { front: 30, back: 25 },
    });
    const near = { back: { one: 52 } };
    expect(graded(gradePattern({ pattern, slack: 1, near }, solver)).grading).toMatchObject({
      front: { one: 61 },
      back: { one: 52 },
    });
    expect(graded(gradePattern({ pattern }, solver)).grading).toMatchObject({ back: { one: 50 } });
  });

  it("keeps existing numbers of counts without a target, and solves the rest where one has none", () => {
    const counts = [count("front"), count("cuff")];
    const kept = oneSize(counts, { targets: { front: 30 }, grading: { front: { one: 1 }, cuff: { one: 7 } } });
    expect(graded(gradePattern({ pattern: kept }, solver)).grading).toEqual({ front: { one: 60 }, cuff: { one: 7 } });
    expect(gradePattern({ pattern: oneSize(counts, { targets: { front: 30 } }) }, solver)).toMatchObject({
      status: "optimal",
      grading: { front: { one: 60 } },
      missing: [{ path: "counts[1]", says: expect.stringContaining("“cuff” has no target") as string }],
    });
  });
});

function bust(): PatternDocument["measurements"][number] {
  const [first] = patternDocument().measurements;
  if (first === undefined) throw new Error("the factory has a measurement");
  return first;
}

describe("rules that cannot all be met", { timeout: 60_000 }, () => {
  const clashing = () =>
    oneSize(
      [
        count("yoke", { repeat: { of: 10, plus: 0 } }),
        count("front", { locked: { one: 57 } }),
        count("back", { least: 50 }),
      ],
      {
        targets: { yoke: 60, back: 10 },
        ties: [{ count: "yoke", equals: [{ times: 1, count: "front" }] }],
      },
    );

  it("are reported as one minimal conflict", () => {
    const outcome = gradePattern({ pattern: clashing() }, solver);
    expect(outcome).toMatchObject({
      status: "infeasible",
      clash: [
        { rule: "repeat", count: "yoke", size: "one", says: "“yoke” is a multiple of 10 in One." },
        { rule: "locked", count: "front", size: "one" },
        { rule: "tie", count: "yoke", size: "one" },
      ],
    });
  });

  it("each come with their smallest relaxation", () => {
    const pattern = clashing();
    const outcome = gradePattern({ pattern }, solver);
    if (outcome.status !== "infeasible") throw new Error("there should be no answer");
    // 57 is 3 below 60, the nearest multiple of 10.
    expect(relaxations(pattern, outcome.clash, solver)).toMatchObject([
      { helps: true, says: "Let “yoke” be 57 in One, off its repeat." },
      { helps: true, says: "Unlock “front” in One: 60 would do." },
      { helps: true, says: "Let the sum of “yoke” be off by 3 in One." },
    ]);
  });

  it("say so if there are two independent conflicts", () => {
    const pattern = oneSize(
      [
        count("front", { locked: { one: 57 }, repeat: { of: 10, plus: 0 } }),
        count("back", { locked: { one: 57 }, repeat: { of: 10, plus: 0 } }),
      ],
      { targets: { front: 30 }, ties: [{ count: "front", equals: [{ times: 1, count: "back" }] }] },
    );
    const outcome = gradePattern({ pattern }, solver);
    if (outcome.status !== "infeasible") throw new Error("there should be no answer");
    expect(outcome.clash).toHaveLength(2);
    expect(relaxations(pattern, outcome.clash, solver)).toMatchObject([{ helps: false }, { helps: false }]);
  });
});
