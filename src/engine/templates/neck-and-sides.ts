import { craftSteps, n, nearest, spread, targetOf, work, type Doing, type PlannedMeasurement } from "./plan";
import { rowsOf, stitches, type Work } from "./shared-parts";

/** A neck: its depth at front and back, cm, and which share of its half is shaped at a slope. */
export interface NeckShape {
  readonly frontCm: number;
  readonly backCm: number;
  readonly frontSlope: number;
  readonly backSlope: number;
}

export const FRONT_AND_BACK = ["front", "back"] as const;
type Half = (typeof FRONT_AND_BACK)[number];
const LABEL: Readonly<Record<Half, string>> = { front: "Front", back: "Back" };

/** Rows and shaping of both necks, from the stitches of the neck and of a shoulder. The floor keeps at least 2 stitches. */
export function neckNumbers(
  { rowCm }: Work,
  { neck, shoulder, shape, armholeRows }: { neck: number; shoulder: number; shape: NeckShape; armholeRows: number },
) {
  const of = (half: Half) => {
    const [depthCm, slope] = half === "front" ? [shape.frontCm, shape.frontSlope] : [shape.backCm, shape.backSlope];
    const rows = Math.min(nearest(depthCm, rowCm), armholeRows - 2);
    const times = Math.max(Math.min(Math.floor((neck / 2) * slope), neck / 2 - 1, rows), 0);
    return {
      [`${half}-neck-rows`]: rows,
      [`${half}-neck-times`]: times,
      [`${half}-floor`]: neck - 2 * times,
      [`${half}-side`]: shoulder + times,
    };
  };
  return { ...of("front"), ...of("back") };
}

export function neckCounts() {
  return Object.fromEntries(
    FRONT_AND_BACK.flatMap((half) => [
      [`${half}-neck-rows`, rowsOf(`${LABEL[half]} neck, rows`)],
      [`${half}-neck-times`, stitches(`${LABEL[half]} neck: times decreased`, { least: 0, isShaping: true })],
      [`${half}-floor`, stitches(`${LABEL[half]} neck: stitches at its centre`, { isRest: true })],
      [`${half}-side`, stitches(`${LABEL[half]}: stitches of each side of the neck`, { isRest: true })],
    ]),
  );
}

export function neckSums(): (readonly [string, Readonly<Record<string, number>>])[] {
  return FRONT_AND_BACK.flatMap((half) => [
    ["neck", { [`${half}-floor`]: 1, [`${half}-neck-times`]: 2 }] as const,
    [`${half}-side`, { shoulder: 1, [`${half}-neck-times`]: 1 }] as const,
  ]);
}

/** From the division at the neck to the shoulders, after `before`. */
export function upperSteps(
  craft: "crochet" | "knitting",
  half: Half,
  before: readonly Doing[],
): readonly (readonly [string, ...Doing[]])[] {
  const { finish } = craftSteps(craft);
  const side = (at: "left" | "right") =>
    [
      `${half}-${at}`,
      work(n(`${half}-neck-rows`), spread("decrease", at === "left" ? "right" : "left", `${half}-neck-times`)),
      finish(`${half}-${at}-shoulder`),
    ] as const;
  return [
    [
      half,
      ...before,
      {
        do: "divide",
        into: [
          { part: `${half}-right`, stitches: n(`${half}-side`) },
          { part: `${half}-centre`, stitches: n(`${half}-floor`) },
          { part: `${half}-left`, stitches: n(`${half}-side`) },
        ],
      },
    ],
    [`${half}-centre`, finish(`${half}-neck`)],
    side("left"),
    side("right"),
  ];
}

export const BODY_PIECES = FRONT_AND_BACK.map((half) => ({
  ...{ id: half, label: LABEL[half], start: "hem" as const },
  parts: [half, `${half}-right`, `${half}-centre`, `${half}-left`],
  edges: (["left", "right"] as const).map((side) => ({
    ...{ id: `${half}-${side}-side`, part: half, side },
    steps: [`${half}-edging`, `${half}-body`] as [string, string],
  })),
}));

/** Sides and shoulders; a left side meets the other half's right, as the right sides show them. */
export const BODY_SEAMS = (["left", "right"] as const).flatMap((side) => {
  const other = side === "left" ? "right" : "left";
  return ["side", "shoulder"].map((what) => ({
    a: { edge: `front-${side}-${what}` },
    b: { edge: `back-${other}-${what}` },
  }));
});

export function neckMeasurements(
  { request, figures, rowCm }: Work,
  numbers: readonly Readonly<Record<string, number>>[],
): PlannedMeasurement[] {
  const depth = (half: Half): PlannedMeasurement => ({
    ...{ id: `${half}-neck-depth`, label: `${LABEL[half]} neck depth`, tolerance: "length" },
    how: "From the level of the shoulder’s inner end straight down to the neck’s edge at the centre.",
    terms: [[1, `${half}-neck-rows`]],
    target: targetOf(request, (index) => round((numbers[index]?.[`${half}-neck-rows`] ?? 0) * rowCm)),
  });
  return [
    {
      ...{ id: "neck", label: "Neck width", how: "Straight across between the shoulders’ inner ends." },
      ...{ tolerance: "narrow", terms: [[1, "neck"]] },
      on: { from: ["front-right-shoulder", 0], to: ["front-left-shoulder", 1] },
      target: targetOf(request, (index) => figures[index]?.neckWidth ?? 0),
    },
    depth("front"),
    depth("back"),
  ];
}

const MM = 10;
function round(cm: number): number {
  return Math.round(cm * MM) / MM;
}
