import {
  PATTERN_FORMAT,
  type Count,
  type Garment,
  type GarmentPiece,
  type GarmentStep,
  type PatternDocument,
} from "@/engine/pattern";

type Side = "left" | "right";
type Distributed<Kind> = Kind extends GarmentStep ? Omit<Kind, "id" | "in"> : never;
type Doing = Distributed<GarmentStep>;

interface Made {
  readonly piece: Pick<GarmentPiece, "id" | "parts" | "edges">;
  /** What is done in which part. */
  readonly steps: readonly (readonly [part: string, ...doing: Doing[]])[];
}

/** Numbers of a cardigan in one size, from the smallest, 0, to the largest, 23. */
function numbersOf(size: number) {
  const neck = 36 + 2 * Math.floor(size / 4);
  const neckTimes = neck / 2 - 2;
  const third = 6 + Math.floor(size / 4);
  const underarm = 5 + Math.floor(size / 3);
  const armholeTimes = 4 + Math.floor(size / 2);
  const front = underarm + armholeTimes + 3 * third + neckTimes;
  const bodyRows = 104 + 2 * Math.floor(size / 2);
  const armholeRows = 56 + 2 * size;
  /** Ribbing 18, underarm 1 and shoulder 5; of the right front, whose underarm takes a row more, one more. */
  const frontRows = bodyRows + armholeRows + 24;
  const capTimes = 16 + Math.floor((2 * size) / 3);
  return {
    neck,
    "neck-times": neckTimes,
    "shoulder-third": third,
    underarm,
    "armhole-times": armholeTimes,
    back: 2 * front + 8,
    front,
    "back-side": 3 * third + 2,
    "left-band": Math.round(0.75 * frontRows),
    "right-band": Math.round(0.75 * (frontRows + 1)),
    cuff: 44 + 2 * Math.floor(size / 3),
    "sleeve-times": 14 + Math.floor(size / 2),
    "cap-times": capTimes,
    "body-rows": bodyRows,
    "armhole-rows": armholeRows,
    "sleeve-rows": 126 + Math.floor(size / 4),
    "cap-rows": 2 * capTimes + 2,
  };
}

type CountId = keyof ReturnType<typeof numbersOf>;

/**
 * An invented garment to outline: a cardigan of 12 pieces with set-in sleeves, a V-neck, bands that are picked up, pockets and a
 * belt, 22 stitches and 30 rows to 10 cm.
 *
 * @param sizes how many, at most 24.
 */
export function benchCardigan(sizes: number): PatternDocument {
  return patternOf(sizes, [
    back("back"),
    ...(["left", "right"] as const).flatMap((side) => [
      front(side),
      sleeve(side),
      band(side),
      pocket(side),
      lining(side),
    ]),
    belt(),
  ]);
}

/** As many backs of the same cardigan, which are its largest pieces. */
export function benchBacks(sizes: number, pieces: number): PatternDocument {
  return patternOf(
    sizes,
    Array.from({ length: pieces }, (_, index) => back(`back-${index + 1}`)),
  );
}

function patternOf(sizes: number, pieces: readonly Made[]): PatternDocument {
  const sizeIds = Array.from({ length: sizes }, (_, index) => `size-${index + 1}`);
  const numbers = sizeIds.map((_, index) => Object.entries(numbersOf(index)));
  return {
    format: PATTERN_FORMAT,
    name: "Cardigan of a bench (invented)",
    craft: "knitting",
    fabrics: [
      { id: "main", label: "Stocking stitch", toolMm: 4, gauge: { stitches: 22, rows: 30 } },
      { id: "rib", label: "Rib", toolMm: 3.5, gauge: { stitches: 25, rows: 30 } },
    ],
    sizes: sizeIds.map((id, index) => ({ id, label: `Size ${index + 1}`, body: { bust: 76 + 5 * index } })),
    sizeBy: "bust",
    counts: Object.keys(numbersOf(0)).map((id): Count => ({
      ...{ id, label: id, fabric: "main", direction: id.endsWith("rows") ? "rows" : "stitches" },
    })),
    ties: [],
    allowances: [],
    measurements: [],
    yarns: [{ id: "wool", label: "Wool", metresPerBall: 110, gramsPerBall: 50 }],
    grading: Object.fromEntries(
      (numbers[0] ?? []).map(([id], nth) => [
        id,
        Object.fromEntries(sizeIds.map((size, index) => [size, numbers[index]?.[nth]?.[1] ?? 0])),
      ]),
    ),
    garment: garmentOf(pieces),
  };
}

function garmentOf(made: readonly Made[]): Garment {
  return {
    pieces: made.map(({ piece }) => ({ ...piece, label: piece.id, fabric: "main", yarn: "wool", made: 1 })),
    steps: made
      .flatMap(({ steps }) => steps.flatMap(([part, ...doing]) => doing.map((what) => ({ part, what }))))
      .map(({ part, what }, index): GarmentStep => ({ ...what, id: `step-${index + 1}`, in: { part } })),
    seams: [],
  };
}

function count(id: CountId) {
  return { count: id };
}

function castOn(stitches: CountId | number): Doing {
  const number = typeof stitches === "number" ? stitches : count(stitches);
  return { do: "start", how: "cast-on", stitches: number, worked: "flat" };
}

function bindOff(at: Side | "both", each: CountId | number, times: number): Doing {
  return { do: "bind-off", at, each: typeof each === "number" ? each : count(each), times };
}

const RIB: Doing = { do: "work", rows: 18, fabric: "rib" };
const BODY: Doing = { do: "work", rows: count("body-rows") };

function back(id: string): Made {
  const [left, neck, right] = [`${id}-left`, `${id}-neck`, `${id}-right`];
  const neckRows = (at: Side): Doing => ({
    ...{ do: "work", rows: 4, shape: [{ at, stitches: 1, times: 2, as: "decrease", every: 2 }] },
  });
  return {
    piece: { id, parts: [id], edges: [{ id: `${id}-side`, part: id, side: "left" }] },
    steps: [
      [id, castOn("back"), RIB, BODY, bindOff("both", "underarm", 1)],
      [
        id,
        {
          do: "work",
          rows: count("armhole-rows"),
          shape: [{ at: "both", stitches: 1, times: count("armhole-times"), as: "decrease", every: 2 }],
        },
        {
          do: "divide",
          into: [
            { part: right, stitches: count("back-side") },
            { part: neck, stitches: count("neck") },
            { part: left, stitches: count("back-side") },
          ],
        },
      ],
      [neck, { do: "end", how: "bind-off", edge: `${id}-neck-edge` }],
      [left, neckRows("right"), bindOff("left", "shoulder-third", 3)],
      [right, neckRows("left"), bindOff("right", "shoulder-third", 3)],
    ],
  };
}

/** The left front lies at the right as one looks at it. */
function front(side: Side): Made {
  const id = `${side}-front`;
  const [armhole, centre] = side === "left" ? (["right", "left"] as const) : (["left", "right"] as const);
  return {
    piece: { id, parts: [id], edges: [{ id: `${id}-edge`, part: id, side: centre }] },
    steps: [
      [id, castOn("front"), RIB, BODY, bindOff(armhole, "underarm", 1)],
      [
        id,
        {
          do: "work",
          rows: count("armhole-rows"),
          shape: [
            { at: armhole, stitches: 1, times: count("armhole-times"), as: "decrease", every: 2 },
            { at: centre, stitches: 1, times: count("neck-times"), as: "decrease" },
          ],
        },
        bindOff(armhole, "shoulder-third", 3),
      ],
    ],
  };
}

function sleeve(side: Side): Made {
  return made(
    `${side}-sleeve`,
    castOn("cuff"),
    RIB,
    {
      do: "work",
      rows: count("sleeve-rows"),
      shape: [{ at: "both", stitches: 1, times: count("sleeve-times"), as: "increase" }],
    },
    bindOff("both", "underarm", 1),
    {
      do: "work",
      rows: count("cap-rows"),
      shape: [{ at: "both", stitches: 1, times: count("cap-times"), as: "decrease", every: 2 }],
    },
    bindOff("both", 3, 2),
  );
}

function band(side: Side): Made {
  const pickUp: Doing = {
    ...{ do: "start", how: "pick-up", stitches: count(`${side}-band`), worked: "flat", rate: [3, 4] },
    along: [{ edge: `${side}-front-edge` }],
  };
  return made(`${side}-band`, pickUp, { do: "work", rows: 9, fabric: "rib" });
}

function pocket(side: Side): Made {
  const rounding: Doing = {
    ...{ do: "work", rows: 8, shape: [{ at: "both", stitches: 1, times: 4, as: "increase", every: 2 }] },
  };
  const rib: Doing = { do: "work", rows: 8, fabric: "rib" };
  return made(`${side}-pocket`, castOn(22), rounding, { do: "work", rows: 32 }, rib);
}

function lining(side: Side): Made {
  return made(`${side}-lining`, castOn(30), { do: "work", rows: 44 });
}

function belt(): Made {
  return made("belt", castOn(11), { do: "work", rows: 330 });
}

/** A piece of one part, bound off at the end. */
function made(id: string, ...doing: Doing[]): Made {
  return {
    piece: { id, parts: [id], edges: [] },
    steps: [[id, ...doing, { do: "end", how: "bind-off", edge: `${id}-top` }]],
  };
}
