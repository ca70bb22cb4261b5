import { describe, expect, it } from "vitest";
import { gaps, testersNeeded, type CauseInput } from "@/engine/gaps";
import { inputSensitivities } from "@/engine/gaps/causes/input-sensitivities";
import { indexPattern, measure, patternWorking } from "@/engine/prediction";
import type { PatternDocument } from "@/engine/pattern";
import { adjustInput } from "@/engine/revision";
import { crochetedCardigan, knittedPullover, simulateCall } from "@/engine/simulation";

const PATTERN = knittedPullover();
const QUIET = {
  gaugeSpread: 0.05,
  driftSd: 0.01,
  readingSd: 0.2,
  roundCm: 0.1,
  missingReadings: 0,
  missingSwatches: 0,
  entryErrorShare: 0,
  yarnRatio: 4.6,
};

function callOf(real: PatternDocument, seed: number) {
  const testers = Object.fromEntries(PATTERN.sizes.map(({ id }, index) => [id, 2 + (index % 3)]));
  return simulateCall({ pattern: PATTERN, real, testers, places: {}, habits: QUIET, seed }).call;
}

function lengths(pattern: PatternDocument): number[] {
  const index = indexPattern(pattern);
  return pattern.sizes.flatMap(({ id }) =>
    pattern.measurements.map((measurement) => measure(index, measurement, patternWorking(index, id)).cm),
  );
}

describe("what each input moves", () => {
  it.each([
    ["pullover", knittedPullover()],
    ["cardigan", crochetedCardigan()],
  ])("is what the %s's measurements do when the input is changed a little", (_, pattern) => {
    // By differences: a count by one stitch, everything else by a thousandth of its unit.
    const before = lengths(pattern);
    let checked = 0;
    for (const { input, sensitivitiesCm } of inputSensitivities(pattern)) {
      const step = input.kind === "count" ? 1 : 1e-3;
      const after = lengths(adjustInput(pattern, input, step, "little"));
      sensitivitiesCm.forEach((move, cell) =>
        expect(((after[cell] ?? 0) - (before[cell] ?? 0)) / step).toBeCloseTo(move, 6),
      );
      checked += 1;
    }
    expect(checked).toBeGreaterThan(60);
  });
});

// A machine that may be busy; each test fits one call with several causes.
const TIME_LIMIT_MS = 120_000;

describe("causes", { timeout: TIME_LIMIT_MS }, () => {
  const planted: readonly (readonly [CauseInput, number])[] = [
    [{ kind: "allowance", id: "neck-band" }, 1],
    [{ kind: "settle", id: "body", direction: "rows" }, 0.06],
    [{ kind: "count", id: "sleeve-stitches", size: "l" }, 9],
    [{ kind: "step", id: "cross-back" }, 3],
  ];

  it.each(planted)("names %o first, with its size in its own unit", (input, amount) => {
    const { causes, cells } = gaps(callOf(adjustInput(PATTERN, input, amount, "planted"), 31));
    const [first] = causes;
    const names = [first, ...(first?.rivals ?? []).filter(({ tied }) => tied)].map((cause) => [
      cause?.kind,
      cause?.id,
      cause?.direction,
      cause?.size,
    ]);
    expect(names).toContainEqual([input.kind, input.id, input.direction, input.size]);
    expect(first?.evidence ?? 0).toBeGreaterThan(1);
    expect(first?.explains ?? 0).toBeGreaterThan(0.5);
    expect(cells.some(({ verdict }) => verdict === "off")).toBe(true);
    if (first?.kind === input.kind) expect(Math.abs((first.estimate - amount) / amount)).toBeLessThan(0.35);
  });

  it("reports an allowance used once and its measurement's offset as tied", () => {
    const [first] = gaps(
      callOf(adjustInput(PATTERN, { kind: "allowance", id: "neck-band" }, -1, "planted"), 32),
    ).causes;
    const all = [first, ...(first?.rivals ?? [])];
    expect(all.map((cause) => cause?.kind)).toEqual(expect.arrayContaining(["allowance", "offset"]));
    expect(first?.rivals.find(({ kind }) => kind === "offset" || kind === "allowance")?.tied).toBe(true);
  });

  it("finds three faults at once", () => {
    const faults: readonly (readonly [CauseInput, number])[] = [
      [{ kind: "allowance", id: "neck-band" }, 1.2],
      [{ kind: "settle", id: "body", direction: "rows" }, 0.06],
      [{ kind: "count", id: "sleeve-stitches", size: "l" }, 10],
    ];
    const real = faults.reduce((pattern, [input, amount]) => adjustInput(pattern, input, amount, "planted"), PATTERN);
    const { causes } = gaps(callOf(real, 33));
    const named = causes.map((cause) =>
      [cause, ...cause.rivals.filter(({ tied }) => tied)].map(({ kind, id }) => `${kind} ${id}`),
    );
    expect(causes).toHaveLength(3);
    for (const [{ kind, id }] of faults) expect(named.some((names) => names.includes(`${kind} ${id}`))).toBe(true);
  });
});

describe("before a call", () => {
  it("needs fewer testers a size where tolerances are wide", () => {
    const wide = {
      ...PATTERN,
      measurements: PATTERN.measurements.map((measurement) => ({
        ...measurement,
        toleranceCm: measurement.toleranceCm * 3,
      })),
    };
    const narrow = testersNeeded(PATTERN);
    expect(narrow).toBeGreaterThan(1);
    expect(testersNeeded(wide) ?? 0).toBeLessThan(narrow ?? 0);
    expect(testersNeeded({ ...PATTERN, measurements: [] })).toBeNull();
  });
});
