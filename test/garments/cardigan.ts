import { bindOff, castOn, ends, madeGarment, n, rows, shaped } from "./made-garment";

/** Neck and shoulder at the same time. */
const backSide = (outer: "left" | "right", inner: "left" | "right") =>
  rows(
    5,
    shaped("bind-off", outer, { stitches: n("third"), times: 2, every: 2, start: 1 }),
    shaped("decrease", inner, { times: 2, every: 2, start: 1 }),
  );

/** A cardigan with a V-neck, worked in a back, two fronts and set-in sleeves. */
export const cardigan = madeGarment({
  name: "V-neck cardigan",
  bust: [86, 98, 110],
  counts: {
    back: ["stitches", 96, 108, 120],
    front: ["stitches", 46, 52, 58],
    "body-rows": ["rows", 85, 88, 91],
    underarm: ["stitches", 5, 6, 7],
    "armhole-times": ["stitches", 6, 8, 10],
    "neck-slow": ["stitches", 8, 9, 10],
    "front-rows": ["rows", 50, 54, 58],
    "back-rows": ["rows", 50, 54, 58],
    third: ["stitches", 6, 7, 7],
    "back-side": ["stitches", 20, 22, 24],
    "back-floor": ["stitches", 34, 36, 38],
    cuff: ["stitches", 46, 48, 52],
    "sleeve-times": ["stitches", 13, 15, 17],
    upper: ["stitches", 72, 78, 86],
    "cap-times": ["stitches", 18, 19, 21],
    "sleeve-rows": ["rows", 104, 104, 106],
  },
  pieces: [
    {
      id: "back",
      label: "Back",
      edges: [
        { id: "back-left-side", part: "back", side: "left" },
        { id: "back-right-side", part: "back", side: "right" },
      ],
    },
    {
      ...{ id: "front", label: "Front", made: 2, mirrored: true },
      edges: [
        { id: "front-side", part: "front", side: "left", steps: ["front-cast-on", "front-body"] },
        { id: "front-neck", part: "front", side: "right" },
      ],
    },
    {
      ...{ id: "sleeve", label: "Sleeve", made: 2 },
      edges: [
        { id: "sleeve-left", part: "sleeve", side: "left" },
        { id: "sleeve-right", part: "sleeve", side: "right" },
      ],
    },
  ],
  steps: [
    [
      "back",
      castOn(n("back")),
      rows(15),
      rows(n("body-rows")),
      bindOff("both", n("underarm")),
      rows(n("back-rows"), shaped("decrease", "both", { times: n("armhole-times"), every: 2 })),
      {
        do: "divide",
        into: [
          { part: "back-right", stitches: n("back-side") },
          { part: "back-floor", stitches: n("back-floor") },
          { part: "back-left", stitches: n("back-side") },
        ],
      },
    ],
    ["back-floor", ends("back-neck")],
    ["back-left", backSide("left", "right"), ends("back-left-shoulder")],
    ["back-right", backSide("right", "left"), ends("back-right-shoulder")],
    [
      "front",
      castOn(n("front")),
      rows(15),
      { ...rows(n("body-rows")), id: "front-body" },
      bindOff("left", n("underarm")),
      rows(
        n("front-rows"),
        shaped("decrease", "left", { times: n("armhole-times"), every: 2 }),
        shaped("decrease", "right", { times: 9, every: 2 }),
        shaped("decrease", "right", { times: n("neck-slow"), every: 4, start: 22 }),
      ),
      bindOff("left", n("third"), 2),
      ends("front-shoulder"),
    ],
    [
      "sleeve",
      castOn(n("cuff")),
      rows(15),
      rows(n("sleeve-rows"), shaped("increase", "both", { times: n("sleeve-times"), every: 6 })),
      bindOff("both", n("underarm")),
      rows(n("cap-times", 2), shaped("decrease", "both", { times: n("cap-times"), every: 2 })),
      bindOff("both", 2, 2),
      ends("cap-top"),
    ],
  ],
  seams: [{ a: { edge: "sleeve-left" }, b: { edge: "sleeve-right" } }],
  measurements: [
    { label: "Back width", terms: [[1, "back"]], on: { piece: "back", from: [0, 0.45], to: [1, 0.45] } },
    { label: "Front width", terms: [[1, "front"]], on: { piece: "front", from: [0, 0.2], to: [1, 0.2] } },
    {
      label: "Length to the underarm",
      terms: [[1, "body-rows"]],
      on: { piece: "front", from: [0.25, 0], to: [0.25, 0.64] },
    },
    {
      label: "Back neck width",
      terms: [[1, "back-floor"]],
      on: { piece: "back", from: [0.3, 0.985], to: [0.7, 0.985] },
    },
    {
      label: "Sleeve to the underarm",
      terms: [[1, "sleeve-rows"]],
      on: { piece: "sleeve", from: [0.5, 0], to: [0.5, 0.725] },
    },
    { label: "Upper arm, around", terms: [[1, "upper"]], on: { piece: "sleeve", from: [0, 0.72], to: [1, 0.72] } },
  ],
});
