import { bindOff, castOn, ends, madeGarment, n, rows, shaped, type Doing } from "./made-garment";

const strap = (part: string, outer: "left" | "right", inner: "left" | "right"): [string, ...Doing[]] => [
  part,
  rows(
    n(`${part.split("-")[0]}-strap-rows`),
    shaped("bind-off", inner, { stitches: 2, times: 3, every: 2, start: 1 }),
    shaped("decrease", inner, { times: 3, every: 2, start: 8 }),
    shaped("increase", outer, { times: 4, every: 4, start: 16 }),
  ),
  bindOff(outer, n("strap-half")),
  ends(`${part}-top`),
];
const piece = (id: string): [string, ...(Doing & { readonly id?: string })[]][] => [
  [
    id,
    castOn(n("width")),
    { ...rows(15), id: `${id}-rib` },
    { ...rows(n("body-rows")), id: `${id}-body` },
    bindOff("both", n("underarm")),
    bindOff("both", 2, 3),
    rows(n(`${id}-rows`)),
    {
      do: "divide",
      into: [
        { part: `${id}-right`, stitches: n("side") },
        { part: `${id}-neck`, stitches: n("floor") },
        { part: `${id}-left`, stitches: n("side") },
      ],
    },
  ],
  [`${id}-neck`, ends(`${id}-neck-edge`)],
  strap(`${id}-left`, "left", "right"),
  strap(`${id}-right`, "right", "left"),
];

/** A tank with wide straps that are shaped at both edges, and a scooped neck. */
export const tank = madeGarment({
  name: "Tank with wide straps",
  bust: [80, 90, 100],
  counts: {
    width: ["stitches", 90, 100, 110],
    "body-rows": ["rows", 75, 78, 80],
    underarm: ["stitches", 5, 6, 7],
    side: ["stitches", 23, 25, 27],
    floor: ["stitches", 22, 26, 30],
    "front-rows": ["rows", 2, 2, 2],
    "back-rows": ["rows", 16, 16, 16],
    "front-strap-rows": ["rows", 48, 50, 52],
    "back-strap-rows": ["rows", 34, 36, 38],
    "strap-half": ["stitches", 9, 10, 11],
  },
  pieces: [
    {
      id: "front",
      label: "Front",
      edges: [{ id: "front-side", part: "front", side: "left", steps: ["front-rib", "front-body"] }],
    },
    {
      id: "back",
      label: "Back",
      edges: [{ id: "back-side", part: "back", side: "right", steps: ["back-rib", "back-body"] }],
    },
  ],
  steps: [...piece("front"), ...piece("back")],
  seams: [{ a: { edge: "front-side" }, b: { edge: "back-side" } }],
  measurements: [
    { label: "Chest, around", terms: [[2, "width"]], on: { piece: "front", from: [0, 0.5], to: [1, 0.5] } },
    {
      label: "Length to the underarm",
      terms: [[1, "body-rows"]],
      on: { piece: "front", from: [0.12, 0], to: [0.12, 0.6] },
    },
    { label: "Strap width", terms: [[2, "strap-half"]], on: { piece: "front", from: [0.08, 0.95], to: [0.28, 0.95] } },
    { label: "Neck width", terms: [[1, "floor"]], on: { piece: "front", from: [0.28, 0.9], to: [0.72, 0.9] } },
  ],
});
