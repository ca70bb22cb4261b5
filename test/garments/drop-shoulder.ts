import { castOn, ends, madeGarment, n, rows, shaped } from "./made-garment";

const inner = (at: "left" | "right") =>
  rows(
    18,
    shaped("bind-off", at, { stitches: 3, times: 1, every: 2, start: 1 }),
    shaped("bind-off", at, { stitches: 2, times: 1, every: 2, start: 3 }),
    shaped("decrease", at, { times: 3, every: 2, start: 5 }),
  );
const backInner = (at: "left" | "right") => rows(4, shaped("decrease", at, { times: 2, every: 2 }));

/** A pullover with drop shoulders and a round neck, its sleeves sewn in straight. */
export const dropShoulder = madeGarment({
  name: "Drop-shoulder pullover",
  bust: [84, 96, 108],
  counts: {
    width: ["stitches", 96, 108, 120],
    shoulder: ["stitches", 32, 37, 42],
    "front-side": ["stitches", 40, 45, 50],
    "front-floor": ["stitches", 16, 18, 20],
    "back-side": ["stitches", 34, 39, 44],
    "back-floor": ["stitches", 28, 30, 32],
    "front-rows": ["rows", 116, 120, 124],
    "back-rows": ["rows", 130, 134, 138],
    cuff: ["stitches", 44, 48, 50],
    "sleeve-top": ["stitches", 84, 88, 94],
    "sleeve-times": ["stitches", 20, 20, 22],
  },
  pieces: [
    { id: "front", label: "Front", parts: ["front", "front-right", "front-floor", "front-left"] },
    { id: "back", label: "Back", parts: ["back", "back-right", "back-floor", "back-left"] },
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
      "front",
      castOn(n("width")),
      rows(15),
      rows(n("front-rows")),
      {
        do: "divide",
        into: [
          { part: "front-right", stitches: n("front-side") },
          { part: "front-floor", stitches: n("front-floor") },
          { part: "front-left", stitches: n("front-side") },
        ],
      },
    ],
    ["front-floor", ends("front-neck")],
    ["front-left", inner("right"), ends("front-left-shoulder")],
    ["front-right", inner("left"), ends("front-right-shoulder")],
    [
      "back",
      castOn(n("width")),
      rows(15),
      rows(n("back-rows")),
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
    ["back-left", backInner("right"), ends("back-left-shoulder")],
    ["back-right", backInner("left"), ends("back-right-shoulder")],
    [
      "sleeve",
      castOn(n("cuff")),
      rows(15),
      rows(112, shaped("increase", "both", { times: n("sleeve-times"), every: 5 })),
      ends("sleeve-edge"),
    ],
  ],
  seams: [
    { a: { edge: "front-left-shoulder" }, b: { edge: "back-right-shoulder" } },
    { a: { edge: "sleeve-left" }, b: { edge: "sleeve-right" } },
  ],
  measurements: [
    { label: "Chest, around", terms: [[2, "width"]], on: { piece: "front", from: [0, 0.4], to: [1, 0.4] } },
    {
      label: "Length from the shoulder",
      terms: [[1, "back-rows"]],
      on: { piece: "front", from: [0.24, 0], to: [0.24, 1] },
    },
    {
      label: "Neck width",
      terms: [[1, "back-floor"]],
      on: { from: ["front-right-shoulder", 0], to: ["front-left-shoulder", 1] },
    },
    { label: "Sleeve length", terms: [[5, "sleeve-times"]], on: { piece: "sleeve", from: [0.5, 0], to: [0.5, 1] } },
    { label: "Upper arm, around", terms: [[1, "sleeve-top"]], on: { piece: "sleeve", from: [0, 0.98], to: [1, 0.98] } },
    { label: "Cuff, around", terms: [[1, "cuff"]], on: { piece: "sleeve", from: [0.24, 0], to: [0.76, 0] } },
  ],
});
