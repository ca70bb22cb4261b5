import { bindOff, castOn, madeGarment, n, rows, shaped, type Doing } from "./made-garment";

const armhole = shaped("decrease", "both", { times: n("armhole-times"), every: 2 });
const slope = (at: "left" | "right"): Doing => ({ do: "short-rows", at, each: n("third"), turns: 2 });
const shoulder = (edge: string, part: string): Doing => ({ do: "end", how: "three-needle", edge, with: { part } });
const frontNeck = (at: "left" | "right") => rows(46, shaped("decrease", at, { times: n("neck-times"), every: 2 }));
const backNeck = (at: "left" | "right") => rows(4, shaped("decrease", at, { times: 2, every: 2 }));

/** A vest with a V-neck, its shoulders sloped in short rows and bound off together. */
export const vest = madeGarment({
  name: "Vest",
  bust: [80, 92, 104],
  counts: {
    width: ["stitches", 90, 102, 114],
    "body-rows": ["rows", 85, 88, 91],
    underarm: ["stitches", 5, 6, 7],
    "armhole-times": ["stitches", 6, 8, 10],
    half: ["stitches", 34, 37, 40],
    "neck-times": ["stitches", 16, 17, 18],
    third: ["stitches", 6, 7, 7],
    "back-side": ["stitches", 20, 22, 24],
    "back-floor": ["stitches", 28, 30, 32],
    "back-neck": ["stitches", 32, 34, 36],
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
  steps: [
    [
      "front",
      castOn(n("width")),
      { ...rows(15), id: "front-rib" },
      { ...rows(n("body-rows")), id: "front-body" },
      bindOff("both", n("underarm")),
      rows(n("armhole-times", 2), armhole),
      {
        do: "divide",
        into: [
          { part: "front-right", stitches: n("half") },
          { part: "front-left", stitches: n("half") },
        ],
      },
    ],
    ["front-left", frontNeck("right"), slope("left"), rows(1), shoulder("front-left-shoulder", "back-right")],
    ["front-right", frontNeck("left"), slope("right"), rows(1), shoulder("front-right-shoulder", "back-left")],
    [
      "back",
      castOn(n("width")),
      { ...rows(15), id: "back-rib" },
      { ...rows(n("body-rows")), id: "back-body" },
      bindOff("both", n("underarm")),
      rows(n("armhole-times", 2), armhole),
      rows(42),
      {
        do: "divide",
        into: [
          { part: "back-right", stitches: n("back-side") },
          { part: "back-floor", stitches: n("back-floor") },
          { part: "back-left", stitches: n("back-side") },
        ],
      },
    ],
    ["back-floor", { do: "end", how: "bind-off", edge: "back-neck" }],
    ["back-left", backNeck("right"), slope("left"), rows(1), shoulder("back-left-shoulder", "front-right")],
    ["back-right", backNeck("left"), slope("right"), rows(1), shoulder("back-right-shoulder", "front-left")],
  ],
  seams: [{ a: { edge: "front-side" }, b: { edge: "back-side" } }],
  measurements: [
    { label: "Chest, around", terms: [[2, "width"]], on: { piece: "front", from: [0, 0.5], to: [1, 0.5] } },
    {
      label: "Length to the underarm",
      terms: [[1, "body-rows"]],
      on: { piece: "front", from: [0.12, 0], to: [0.12, 0.59] },
    },
    { label: "Neck width", terms: [[1, "back-neck"]], on: { piece: "back", from: [0.322, 0.985], to: [0.678, 0.985] } },
    { label: "Neck depth", terms: [[1, "half"]], on: { piece: "front", from: [0.5, 0.7], to: [0.5, 1] } },
  ],
});
