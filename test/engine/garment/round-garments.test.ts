import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { areaWithin, outlined, rounded, stitchRuns } from "./outlined";

/* A stitch is 0.5 cm × 0.4 cm = 0.2 cm². All expected values are worked by hand. */

describe("a pullover with a circular yoke", () => {
  const decrease = (stitches: number, row: number) =>
    ({ at: "even", stitches, times: 1, as: "decrease", start: row }) as const;
  const { piece, messages } = outlined(
    garmentPattern({
      pieces: [
        { id: "body", parts: ["body", "underarm-one", "underarm-two"] },
        { id: "sleeve", made: 2 },
        { id: "yoke", parts: ["yoke"] },
      ],
      steps: [
        { in: "yoke", do: "join", as: "yoke", worked: "round", parts: yokeParts() },
        {
          ...{ in: "yoke", do: "work", rows: 40 },
          shape: [decrease(50, 10), decrease(50, 20), decrease(40, 30)],
        },
        { in: "yoke", do: "end", how: "bind-off", edge: "neck" },
        { in: "body", do: "start", how: "cast-on", stitches: 160, worked: "round" },
        { in: "body", do: "work", rows: 60 },
        { in: "body", do: "mark", marker: "side", at: 80 },
        { in: "body", do: "hold", at: { marker: "side" }, each: 10, to: "underarm-one" },
        { in: "body", do: "hold", at: "even", each: 10, to: "underarm-two" },
        { in: "sleeve", do: "start", how: "cast-on", stitches: 40, worked: "round" },
        {
          ...{ in: "sleeve", do: "work", rows: 100 },
          shape: [{ at: "both", stitches: 1, times: 10, as: "increase", every: 10 }],
        },
      ],
    }),
  );

  function yokeParts() {
    return [{ part: "body" }, { part: "sleeve", copy: 1 }, { part: "sleeve", copy: 2 }];
  }

  it("joins body and both sleeves, whatever the order of the list, and loses no stitch", () => {
    // 160 − 10 − 10 + 2 × (40 + 20) = 260; then 50, 50 and 40 fewer in rounds 10, 20 and 30.
    expect(messages).toEqual([]);
    expect(stitchRuns(piece("yoke").steps)).toEqual(["260 × 9", "210 × 10", "160 × 10", "120 × 11"]);
  });

  it("is laid flat as a tube, its circumference twice as wide", () => {
    const { steps, areaCm2, outline } = piece("yoke");
    // 260 × 0.5 = 130 cm around, 65 cm flat; the neck 120 × 0.5 = 60 cm around.
    expect(steps[0]).toMatchObject({ circumferenceCm: 130, leftCm: -32.5, rightCm: 32.5 });
    expect(steps.at(-1)?.circumferenceCm).toBe(60);
    // (260 × 9 + 210 × 10 + 160 × 10 + 120 × 11) × 0.2 = 7360 × 0.2, both layers.
    expect(areaCm2).toBeCloseTo(1472, 9);
    expect(areaWithin(outline)).toBeCloseTo(736, 6);
    expect(rounded(outline).slice(0, 4)).toEqual([
      [-32.5, 0],
      [32.5, 0],
      [32.5, 3.6],
      [26.25, 3.6],
    ]);
  });

  it("counts the stitches of both sleeves", () => {
    // 40 for 9 rounds, then 10 rounds each of 42, 44 … 58, and the last of 60: 360 + 10 × 450 + 60 = 4920 a sleeve.
    expect(stitchRuns(piece("sleeve").steps).slice(0, 3)).toEqual(["40 × 9", "42 × 10", "44 × 10"]);
    expect(piece("sleeve").stitches).toBe(2 * 4920);
    expect(piece("sleeve").areaCm2).toBeCloseTo(4920 * 0.2, 9);
  });
});

const RAGLAN_LINES = ["one", "two", "three", "four"] as const;

const raglanSteps: readonly Step[] = [
  { in: "yoke", do: "start", how: "cast-on", stitches: 80, worked: "round" },
  { in: "yoke", do: "mark", marker: "start", at: "start-of-round" },
  // Back 28, sleeve 12, front 28, sleeve 12; each line at the end of one of them.
  ...RAGLAN_LINES.map((marker, index): Step => ({ in: "yoke", do: "mark", marker, at: [28, 40, 68, 80][index] ?? 0 })),
  {
    ...{ in: "yoke", do: "work", rows: 40 },
    shape: RAGLAN_LINES.map((marker) => ({
      ...{ at: { marker }, stitches: 2, times: 20, as: "increase", every: 2 },
    })),
  },
  {
    ...{ id: "divide", in: "yoke", do: "divide" },
    into: [
      { part: "back", stitches: 68 },
      { part: "sleeve", stitches: 52 },
      { part: "front", stitches: 68 },
      { part: "sleeve", stitches: 52 },
    ],
  },
  {
    ...{ in: "body", do: "join", as: "body", worked: "round", between: [8, 8] },
    parts: [{ part: "back" }, { part: "front" }],
  },
  { in: "body", do: "work", rows: 50 },
  { in: "body", do: "end", how: "bind-off", edge: "hem" },
  {
    ...{ id: "underarm", in: "arm", do: "join", as: "arm", worked: "round", between: [8] },
    parts: [{ part: "sleeve" }],
  },
  { in: "arm", do: "work", rows: 60, shape: [{ at: "both", stitches: 1, times: 5, as: "decrease", every: 12 }] },
  { in: "arm", do: "end", how: "bind-off", edge: "cuff" },
];

describe("a raglan from the neck", () => {
  const { piece, messages } = outlined(
    garmentPattern({
      pieces: [
        { id: "yoke", parts: ["yoke", "back", "front"], start: "neck" },
        { id: "body" },
        { id: "sleeve", parts: ["sleeve", "arm"], made: 2 },
      ],
      steps: raglanSteps,
    }),
  );

  it("gains 8 stitches every other round, all four lines at once", () => {
    expect(messages).toEqual([]);
    // 80 + 20 × 8 = 240 = 68 + 52 + 68 + 52.
    const runs = stitchRuns(piece("yoke").steps);
    expect(runs.slice(0, 3)).toEqual(["80 × 1", "88 × 2", "96 × 2"]);
    expect(runs.at(-1)).toBe("240 × 1");
    // 80 + 2 × (88 + 96 + … + 232) + 240 = 80 + 2 × 19 × 160 + 240.
    expect(piece("yoke").stitches).toBe(6400);
  });

  it("is divided into body and sleeves, each of them with its underarm", () => {
    // 68 + 8 + 68 + 8 = 152 around 76 cm; sleeves 52 + 8 = 60, 10 fewer in rounds 12, 24 … 60.
    expect(stitchRuns(piece("body").steps)).toEqual(["152 × 50"]);
    expect(piece("body").steps[0]).toMatchObject({ row: 1, circumferenceCm: 76 });
    expect(stitchRuns(piece("sleeve").steps)).toEqual([
      "60 × 11",
      "58 × 12",
      "56 × 12",
      "54 × 12",
      "52 × 12",
      "50 × 1",
    ]);
    // Two sleeves: 2 × (660 + 12 × (58 + 56 + 54 + 52) + 50) = 2 × 3350.
    expect(piece("sleeve").stitches).toBe(6700);
    // 60 × 0.5 = 30 cm around, 15 cm flat.
    expect(piece("sleeve").steps[0]).toMatchObject({ circumferenceCm: 30, leftCm: -7.5, rightCm: 7.5 });
  });
});

describe("a yoke worked down from two shoulders", () => {
  const shoulder = (part: string): Step[] => [
    { in: part, do: "start", how: "cast-on", stitches: 20, worked: "flat" },
    { in: part, do: "work", rows: 10 },
  ];
  const { piece, messages } = outlined(
    garmentPattern({
      pieces: [{ id: "back", parts: ["one", "two", "back"], start: "neck" }],
      steps: [
        ...shoulder("one"),
        ...shoulder("two"),
        { in: "two", do: "work", rows: 2 },
        {
          ...{ in: "back", do: "join", as: "back", worked: "flat", between: [30] },
          parts: [{ part: "one" }, { part: "two" }],
        },
        { in: "back", do: "work", rows: 20 },
        { in: "back", do: "end", how: "bind-off", edge: "hem" },
      ],
    }),
  );

  it("places the shoulders beside the new stitches between them, their last rows level", () => {
    expect(messages).toEqual([]);
    // 20 + 30 + 20 = 70 stitches, 35 cm. In needle order the first is at the right; it has 2 rows (0.8 cm) fewer.
    expect(rounded(piece("back").outline)).toEqual([
      ...[
        [-17.5, 0],
        [-7.5, 0],
        [-7.5, 4.8],
        [7.5, 4.8],
        [7.5, 0.8],
        [17.5, 0.8],
      ],
      ...[
        [17.5, 12.8],
        [-17.5, 12.8],
        [-17.5, 0],
      ],
    ]);
    expect(piece("back").stitches).toBe(20 * 10 + 20 * 12 + 70 * 20);
    expect(areaWithin(piece("back").outline)).toBeCloseTo(piece("back").areaCm2, 6);
  });
});
