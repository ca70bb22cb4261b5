import { ends, madeGarment, n, rows, type Doing } from "./made-garment";

const start: Doing = {
  ...{ do: "start", how: "foundation", stitches: n("side"), worked: "flat" },
  turn: { stitches: 2, counts: false },
};
const off = (each: number | ReturnType<typeof n>, times = 1): Doing => ({ do: "bind-off", at: "left", each, times });
const on = (each: number | ReturnType<typeof n>, times = 1): Doing => ({ do: "add", at: "left", each, times });
const half = (part: string, ...neck: Doing[]) =>
  [
    part,
    start,
    rows(3),
    on(n("armhole")),
    rows(n("shoulder-rows")),
    ...neck,
    rows(n("shoulder-rows")),
    off(n("armhole")),
    rows(3),
    { do: "end", how: "fasten-off", edge: `${part}-side` },
  ] as [string, ...Doing[]];

/** A crocheted tee in mesh, its front and back worked from side to side, with short straight sleeves. */
export const meshTee = madeGarment({
  name: "Mesh tee",
  craft: "crochet",
  bust: [84, 96, 108],
  counts: {
    side: ["stitches", 66, 68, 70],
    armhole: ["stitches", 36, 38, 41],
    "shoulder-rows": ["rows", 28, 34, 40],
    "neck-rows": ["rows", 30, 32, 34],
    "back-neck-rows": ["rows", 38, 40, 42],
    sleeve: ["stitches", 72, 76, 82],
  },
  pieces: [
    { id: "front", label: "Front", start: "side" },
    { id: "back", label: "Back", start: "side" },
    {
      ...{ id: "sleeve", label: "Sleeve", made: 2 },
      edges: [
        { id: "sleeve-left", part: "sleeve", side: "left" },
        { id: "sleeve-right", part: "sleeve", side: "right" },
      ],
    },
  ],
  steps: [
    half("front", off(6), off(3, 2), off(2, 1), rows(n("neck-rows")), on(2, 1), on(3, 2), on(6)),
    half("back", off(4), off(1), rows(n("back-neck-rows")), on(1), on(4)),
    [
      "sleeve",
      { do: "start", how: "chain", stitches: n("sleeve"), worked: "flat", turn: { stitches: 2, counts: false } },
      rows(24),
      ends("sleeve-edge"),
    ],
  ],
  seams: [{ a: { edge: "sleeve-left" }, b: { edge: "sleeve-right" } }],
  measurements: [
    { label: "Chest, half", terms: [[2, "shoulder-rows"]], on: { piece: "front", from: [0, 0.5], to: [1, 0.5] } },
    {
      label: "Length",
      terms: [
        [1, "side"],
        [1, "armhole"],
      ],
      on: { piece: "front", from: [0.2, 0], to: [0.2, 1] },
    },
    { label: "Neck width", terms: [[1, "neck-rows"]], on: { piece: "back", from: [0.32, 0.985], to: [0.68, 0.985] } },
    { label: "Sleeve, around", terms: [[1, "sleeve"]], on: { piece: "sleeve", from: [0, 0.5], to: [1, 0.5] } },
  ],
});
