import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { outlineGarment } from "@/engine/garment";
import { predictStitches } from "@/engine/prediction";
import { garmentPattern, ROW_CM, STITCH_CM, type Step } from "../../factories/garment-pattern";
import { patternDocument } from "../../factories/pattern";
import { areaWithin, rounded } from "./outlined";

const RUNS = 150;
const ran = { widths: 0, mirrored: 0, divided: 0, upgraded: 0, orders: 0 };

afterAll(() => {
  console.log("garments", ran);
  expect(Math.min(...Object.values(ran))).toBeGreaterThan(RUNS / 4);
});

const at = fc.constantFrom("left", "right", "both");

function workSteps(as: fc.Arbitrary<"increase" | "decrease" | "bind-off" | "add">) {
  const shape = fc.record({
    at: fc.constantFrom("left", "right", "both", "centre", "even"),
    stitches: fc.integer({ min: 1, max: 2 }),
    times: fc.integer({ min: 0, max: 4 }),
    as,
    every: fc.integer({ min: 1, max: 3 }),
  });
  return fc.record({
    in: fc.constant("front"),
    do: fc.constant("work"),
    rows: fc.integer({ min: 0, max: 14 }),
    shape: fc.array(shape, { maxLength: 3 }),
  });
}

/** Steps of a flat part that begins with enough stitches for all of them. */
const flatSteps = fc.array(
  fc.oneof(
    workSteps(fc.constantFrom("increase", "decrease", "bind-off", "add")),
    fc.record({
      in: fc.constant("front"),
      do: fc.constantFrom("add", "bind-off", "leave", "hold"),
      at,
      each: fc.integer({ min: 0, max: 4 }),
      times: fc.integer({ min: 0, max: 3 }),
    }),
    fc.record({
      in: fc.constant("front"),
      do: fc.constant("short-rows"),
      at,
      each: fc.integer({ min: 0, max: 3 }),
      turns: fc.integer({ min: 0, max: 4 }),
    }),
  ),
  { minLength: 1, maxLength: 6 },
);

function front(steps: readonly Step[], piece: { made?: number; mirrored?: boolean } = {}) {
  return garmentPattern({
    pieces: [{ id: "front", ...piece }],
    steps: [
      { in: "front", do: "start", how: "cast-on", stitches: 200, worked: "flat" },
      { in: "front", do: "work", rows: 1 },
      ...steps,
      { in: "front", do: "end", how: "bind-off", edge: "top" },
    ],
  });
}

describe("a flat piece, whatever its steps", () => {
  it("is in every row as wide as its live stitches, and has the area of those worked", () => {
    fc.assert(
      fc.property(flatSteps, (steps) => {
        const [piece] = outlineGarment(front(steps), "small").pieces;
        if (piece === undefined) throw new Error("no piece");
        for (const { onNeedle, spans } of piece.steps)
          onNeedle.forEach((stitches, index) => {
            const [leftCm, rightCm] = spans[index] ?? [0, 0];
            expect(rightCm - leftCm).toBeCloseTo(stitches * STITCH_CM, 6);
          });
        expect(piece.areaCm2).toBeCloseTo(piece.stitches * STITCH_CM * ROW_CM, 6);
        expect(areaWithin(piece.outline)).toBeCloseTo(piece.areaCm2, 4);
        expect(piece.outline[0]).toEqual(piece.outline.at(-1));
        if (piece.steps.length > 10) ran.widths += 1;
      }),
      { numRuns: RUNS },
    );
  });

  it("is mirrored in its second copy where nothing depends on the side of a row", () => {
    const symmetric = fc.array(workSteps(fc.constantFrom("increase", "decrease")), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(symmetric, (steps) => {
        const [piece] = outlineGarment(front(steps, { made: 2, mirrored: true }), "small").pieces;
        const [alone] = outlineGarment(front(steps), "small").pieces;
        expect(piece?.outline).toEqual(alone?.outline);
        expect(piece?.stitches).toBe(2 * (alone?.stitches ?? 0));
        expect(piece?.mirrored?.areaCm2).toBeCloseTo(piece?.areaCm2 ?? 0, 6);
        const points = (outline: readonly (readonly [number, number])[], sign: number) =>
          rounded(outline.slice(1).map(([x, y]) => [sign * x, y]))
            .map(String)
            .toSorted();
        expect(points(piece?.mirrored?.outline ?? [], 1)).toEqual(points(piece?.outline ?? [], -1));
        ran.mirrored += 1;
      }),
      { numRuns: RUNS },
    );
  });
});

describe("stitches", () => {
  const shares = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 2, maxLength: 6 });

  it("are neither lost nor gained where they are divided and joined again, in any order of the list", () => {
    fc.assert(
      fc.property(shares, fc.boolean(), fc.integer({ min: 1, max: 9 }), fc.nat(), (parts, isRound, added, turn) => {
        const total = parts.reduce((sum, stitches) => sum + stitches, 0);
        const worked = isRound ? "round" : "flat";
        const names = parts.map((_, index) => `p${index}`);
        const steps: Step[] = [
          { in: "body", do: "start", how: "cast-on", stitches: total, worked },
          { in: "body", do: "work", rows: 3 },
          { in: "body", do: "divide", into: names.map((part, index) => ({ part, stitches: parts[index] ?? 0 })) },
          ...names.map((part): Step => ({ in: part, do: "work", rows: 2 })),
          {
            ...{ in: "yoke", do: "join", as: "yoke", worked, parts: names.map((part) => ({ part })) },
            between: [added],
          },
          { in: "yoke", do: "work", rows: 4 },
          { in: "yoke", do: "end", how: "bind-off", edge: "top" },
        ];
        const named = steps.map((step, index) => ({ ...step, id: `n${index}` }));
        const list = [...named.slice(turn % named.length), ...named.slice(0, turn % named.length)];
        const pieces = [{ id: "body", parts: ["body", "yoke"] }];
        const { pieces: made, faults } = outlineGarment(garmentPattern({ pieces, steps: named }), "small");
        const [piece] = made;
        expect(faults).toEqual([]);
        const counted = piece?.steps.map(({ onNeedle }) => onNeedle.reduce((sum, stitches) => sum + stitches, 0));
        expect(counted).toEqual([total, total, total, total, total, ...Array(4).fill(total + added)]);
        expect(piece?.stitches).toBe(5 * total + 4 * (total + added));
        ran.divided += 1;
        if (list[0] === named[0]) return;
        const turned = outlineGarment(garmentPattern({ pieces, steps: list }), "small");
        expect(turned.pieces[0]?.stitches).toBe(piece?.stitches);
        ran.orders += 1;
      }),
      { numRuns: RUNS },
    );
  });
});

describe("a pattern of format 1", () => {
  it("has as many stitches and as much area in format 2", () => {
    const sections = fc.array(
      fc.record({ from: fc.integer({ min: 1, max: 99 }), to: fc.integer({ min: 1, max: 99 }), rows: fc.nat(40) }),
      { minLength: 1, maxLength: 4 },
    );
    const worked = fc.constantFrom("flat" as const, "round" as const);
    fc.assert(
      fc.property(sections, worked, fc.integer({ min: 1, max: 3 }), (numbers, worked, made) => {
        const counts = numbers.flatMap((section, index) =>
          Object.entries(section).map(([key, value]) => ({ id: `${key}-${index}`, key, value })),
        );
        const pattern = patternDocument({
          fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 }, worked }],
          counts: counts.map(({ id, key }) => ({
            ...{ id, label: id, fabric: "main", least: 0 },
            direction: key === "rows" ? "rows" : "stitches",
          })),
          measurements: [],
          yarns: [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }],
          pieces: [
            {
              ...{ id: "front", label: "Front", fabric: "main", made, yarn: "wool" },
              sections: numbers.map((_, index) => ({
                from: `from-${index}`,
                to: `to-${index}`,
                rows: `rows-${index}`,
              })),
            },
          ],
          grading: Object.fromEntries(counts.map(({ id, value }) => [id, { small: value, large: value }])),
        });
        const [piece] = outlineGarment(pattern, "small").pieces;
        // Source: what format 1 said, made × Σ rows × (from + to) ÷ 2.
        const stated = made * numbers.reduce((sum, { from, to, rows }) => sum + (rows * (from + to)) / 2, 0);
        expect(predictStitches({ pattern, size: "small" })).toEqual([{ piece: "front", stitches: stated }]);
        expect(piece?.stitches).toBeCloseTo(stated, 6);
        expect(piece?.areaCm2).toBeCloseTo((stated / made) * STITCH_CM * ROW_CM, 6);
        ran.upgraded += 1;
      }),
      { numRuns: RUNS },
    );
  });
});
