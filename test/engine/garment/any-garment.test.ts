import fc from "fast-check";
import { afterAll, expect, it } from "vitest";
import { outlineGarment, parseOutlineInput } from "@/engine/garment";
import { garmentView, type Line } from "@/engine/garment-view";
import { garmentPattern, type Step } from "../../factories/garment-pattern";

const RUNS = 200;
const ran = { faulty: 0, worked: 0, joined: 0, drawn: 0, assembled: 0 };

afterAll(() => {
  console.log("any garments", ran);
  expect(ran.faulty).toBeGreaterThan(RUNS / 4);
  expect(ran.worked).toBeGreaterThan(RUNS / 4);
  expect(ran.drawn).toBeGreaterThan(RUNS / 4);
  expect(ran.assembled).toBeGreaterThan(2);
  expect(ran.joined).toBeGreaterThan(RUNS / 20);
});

const partId = fc.constantFrom("a", "b", "c", "d", "e");
const number = fc.oneof(fc.integer({ min: 0, max: 40 }), fc.constant({ count: "width", times: 2, over: 7 }));
const few = fc.integer({ min: 0, max: 5 });
const at = fc.oneof(
  fc.constantFrom("left", "right", "both", "centre", "even"),
  fc.constantFrom({ marker: "m" }, { marker: "n" }),
);
const worked = fc.constantFrom("flat", "round", "turned rounds", "spiral");
const edge = fc.constantFrom("edge-a", "edge-b", "top-a", "top-b");
const optional = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined });

const doing = fc.oneof(
  fc.record({
    do: fc.constant("start"),
    how: fc.constantFrom("cast-on", "provisional", "chain", "foundation", "pick-up"),
    stitches: number,
    along: fc.array(fc.record({ edge, from: fc.constantFrom(0, 0.3), to: fc.constantFrom(0.2, 1) }), { maxLength: 2 }),
    rate: fc.constantFrom([3, 4] as [number, number], [1, 1] as [number, number]),
    worked,
  }),
  fc.record({
    do: fc.constant("work"),
    rows: fc.oneof(few, number),
    fabric: fc.constantFrom("main", "rib"),
    shape: fc.array(
      fc.record({
        ...{ at, stitches: few, times: few, every: optional(few), start: optional(few), everyOther: fc.boolean() },
        as: fc.constantFrom("increase", "decrease", "bind-off", "add"),
      }),
      { maxLength: 2 },
    ),
  }),
  fc.record({ do: fc.constant("section"), from: number, to: number, rows: few }),
  fc.record({
    ...{ do: fc.constantFrom("add", "bind-off", "hold", "leave"), at, each: few, times: few },
    to: fc.constantFrom("d", "e", "top-a"),
  }),
  fc.record({ do: fc.constant("short-rows"), at, each: few, turns: few }),
  fc.record({
    do: fc.constant("mark"),
    marker: fc.constantFrom("m", "n"),
    at: fc.constantFrom<"start-of-round" | number>("start-of-round", 3, 9),
  }),
  fc.record({ do: fc.constant("unmark"), marker: fc.constant("m") }),
  fc.record({
    do: fc.constant("divide"),
    into: fc.array(fc.record({ part: partId, stitches: number }), { minLength: 1, maxLength: 3 }),
  }),
  fc.record({
    do: fc.constant("join"),
    parts: fc.array(fc.record({ part: partId, copy: fc.constantFrom(1, 2, 3) }), { minLength: 1, maxLength: 3 }),
    ...{ as: partId, between: fc.array(few, { maxLength: 3 }), worked },
  }),
  fc.record({
    ...{
      do: fc.constant("end"),
      how: fc.constantFrom("bind-off", "hold", "graft", "three-needle", "fasten-off"),
      edge,
    },
    with: optional(fc.record({ part: partId })),
  }),
);

const steps = fc.array(
  fc.record({ in: fc.oneof(partId, fc.record({ part: partId, copy: fc.constantFrom(1, 2) })), what: doing }),
  { minLength: 3, maxLength: 25 },
);

function edgesOf(part: string) {
  return [
    { id: `edge-${part}`, part, side: "left" as const },
    { id: `top-${part}`, part, side: "top" as const },
  ];
}

function numbersOf({ from, stretches }: Line): number[] {
  return [...from, ...stretches.flatMap(({ to, by }) => [...to, ...(by ?? []).flat()])];
}

it("whatever its steps, a garment is worked as far as it goes, in finite numbers and with no stitches below none", () => {
  fc.assert(
    fc.property(steps, fc.boolean(), (drawn, mirrored) => {
      const starts = ["a", "b"].map((part): Step => ({
        in: part,
        do: "start",
        how: "cast-on",
        stitches: 30,
        worked: "flat",
      }));
      const pattern = garmentPattern({
        counts: { width: ["stitches", 70, 81] },
        pieces: [
          { id: "one", label: "Front", parts: ["a", "c"], made: 2, mirrored, edges: edgesOf("a") },
          { id: "two", label: "Sleeve", parts: ["b"], made: 3, edges: edgesOf("b") },
        ],
        steps: [...starts, ...drawn.map(({ in: part, what }): Step => ({ ...what, in: part }))],
        seams: [{ a: { edge: "edge-a" }, b: { edge: "edge-b" } }],
      });
      for (const size of ["small", "large"]) {
        const input = parseOutlineInput(JSON.parse(JSON.stringify({ pattern, size })));
        if (!input.ok) throw new Error(JSON.stringify(input.faults));
        const { pieces, faults } = outlineGarment(input.document.pattern, size);
        for (const { steps, outline, areaCm2, stitches } of pieces) {
          const numbers = [areaCm2, stitches, ...outline.flat(), ...steps.flatMap(({ onNeedle }) => onNeedle)];
          expect(numbers.every(Number.isFinite)).toBe(true);
          expect(Math.min(0, ...steps.flatMap(({ onNeedle }) => onNeedle))).toBe(0);
        }
        const view = garmentView(input.document.pattern, input.document.pattern.grading ?? {}, size);
        const drawings = [...(view.garment ? [view.garment] : []), ...view.pieces];
        for (const { shapes, box } of drawings) {
          const lines = shapes.flatMap(({ fabric, edges }) => [fabric, ...edges]);
          expect([...Object.values(box), ...lines.flatMap(numbersOf)].every(Number.isFinite)).toBe(true);
          ran.drawn += 1;
        }
        if (view.garment) ran.assembled += 1;
        if (faults.length > 0) ran.faulty += 1;
        if (pieces.some(({ stitches }) => stitches > 0)) ran.worked += 1;
        if (drawn.some(({ what }) => what.do === "join")) ran.joined += 1;
      }
    }),
    { numRuns: RUNS },
  );
});
