import { beforeAll, describe, expect, it } from "vitest";
import { gradePattern, relaxations, parseGradeRequest } from "@/engine/grading";
import type { Solver } from "@/engine/integer-program";
import type { PatternDocument } from "@/engine/pattern";
import { highsSolver } from "@/solver/highs-solver";
import { count, oneSize } from "../../factories/one-size";
import { patternDocument } from "../../factories/pattern";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

function bust(): PatternDocument["measurements"][number] {
  const [first] = patternDocument().measurements;
  if (first === undefined) throw new Error("the factory has a measurement");
  return first;
}

describe("what grade reads", () => {
  it.each([
    [
      "25 sizes",
      patternDocument({
        sizes: Array.from({ length: 25 }, (_, index) => ({
          id: `s${index}`,
          label: `S${index}`,
          body: { bust: 80 + index },
        })),
      }),
      "sizes",
      "must hold at most 24 sizes.",
    ],
    [
      "a measurement without terms",
      patternDocument({ measurements: [{ ...bust(), terms: [] }] }),
      "measurements[0].terms",
      "must hold at least one term.",
    ],
    [
      "a gauge of 0",
      patternDocument({ fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 0, rows: 25 } }] }),
      "fabrics[0].gauge.stitches",
      "must be above 0.",
    ],
    [
      "a body measurement that one size lacks and a target names",
      patternDocument({
        sizes: [
          { id: "small", label: "S", body: { bust: 90, hip: 96 } },
          { id: "large", label: "L", body: { bust: 110 } },
        ],
        measurements: [{ ...bust(), target: { body: "hip", easeCm: 2 } }],
      }),
      "measurements[0].target.body",
      "the body measurement “hip” is missing in size L.",
    ],
  ])("refuses %s, and says where", (_what, pattern, path, says) => {
    const parsed = parseGradeRequest(JSON.parse(JSON.stringify(pattern)));
    expect(parsed.ok ? [] : parsed.faults).toContainEqual({ path, says });
  });

  it.each([
    [
      "a repeat of 0",
      { pattern: oneSize([count("front", { repeat: { of: 0, plus: 0 } })]) },
      /^pattern\.counts\[0\]\.repeat/,
    ],
    [
      "a target that names a body measurement a size has not",
      { pattern: withoutBody() },
      /^pattern\.(measurements|sizes)/,
    ],
    ["a tested count that is none", { pattern: patternDocument(), near: { cuff: { small: 1 } } }, /^near\.cuff$/],
    ["a tested size that is none", { pattern: patternDocument(), near: { width: { tiny: 1 } } }, /^near\.width\.tiny$/],
    ["slack below 0", { pattern: patternDocument(), slack: -1 }, /^slack$/],
  ])("refuses %s at its path", (_what, value, path) => {
    const parsed = parseGradeRequest(JSON.parse(JSON.stringify(value)));
    expect(parsed.ok ? [] : parsed.faults.map((fault) => fault.path)).toEqual([expect.stringMatching(path)]);
  });
});

function withoutBody(): PatternDocument {
  return patternDocument({ measurements: [{ ...bust(), target: { body: "hip", easeCm: 2 } }] });
}

describe("sizes out of order", () => {
  it("are refused at their place, for nothing may shrink from a size to the next", () => {
    const [small, large] = patternDocument().sizes;
    if (small === undefined || large === undefined) throw new Error("the factory has two sizes");
    const says = "S has a smaller body than L before it: put the sizes in order, from small to large.";
    expect(gradePattern({ pattern: patternDocument({ sizes: [large, small] }) }, solver)).toEqual({
      status: "faults",
      faults: [{ path: "sizes[1]", says }],
    });
  });
});

describe("ties in a circle", { timeout: 60_000 }, () => {
  const circle = (times: number) =>
    oneSize([count("front"), count("back"), count("yoke")], {
      targets: { front: 30 },
      ties: [
        { count: "front", equals: [{ times, count: "back" }] },
        { count: "back", equals: [{ times: 1, count: "yoke" }] },
        { count: "yoke", equals: [{ times: 1, count: "front" }] },
      ],
    });

  it("are kept where they agree", () => {
    expect(gradePattern({ pattern: circle(1) }, solver)).toMatchObject({
      status: "optimal",
      grading: { front: { one: 60 }, back: { one: 60 }, yoke: { one: 60 } },
    });
  });

  it("conflict if only 0 would meet them: a number that equals twice itself", () => {
    const outcome = gradePattern({ pattern: circle(2) }, solver);
    if (outcome.status !== "infeasible") throw new Error(outcome.status);
    expect(outcome.clash.map(({ rule }) => rule).toSorted()).toEqual(["least", "tie", "tie", "tie"]);
  });
});

describe("two separate clashes", { timeout: 60_000 }, () => {
  it("are reported one after the other, once the first is relaxed", () => {
    const odd = { locked: { one: 57 }, repeat: { of: 10, plus: 0 } };
    const twoClashes = (front: typeof odd | { repeat: { of: number; plus: number } }) =>
      oneSize([count("front", front), count("back", odd)], { targets: { front: 30, back: 25 } });
    const first = gradePattern({ pattern: twoClashes(odd) }, solver);
    if (first.status !== "infeasible") throw new Error(first.status);
    expect(new Set(first.clash.map((clash) => clash.count))).toEqual(new Set(["front"]));
    expect(relaxations(twoClashes(odd), first.clash, solver).map(({ helps }) => helps)).toEqual([true, true]);
    const second = gradePattern({ pattern: twoClashes({ repeat: odd.repeat }) }, solver);
    if (second.status !== "infeasible") throw new Error(second.status);
    expect(new Set(second.clash.map((clash) => clash.count))).toEqual(new Set(["back"]));
  });
});
