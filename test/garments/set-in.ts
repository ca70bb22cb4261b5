import { bindOff, castOn, ends, madeGarment, n, rows, shaped } from "./made-garment";

const armhole = [
  bindOff("both", n("underarm")),
  bindOff("both", 2),
  rows(n("armhole-times", 2), shaped("decrease", "both", { times: n("armhole-times"), every: 2 })),
];
const divided = (part: string) => ({
  ...{ do: "divide" as const },
  into: [
    { part: `${part}-right`, stitches: n(`${part}-side`) },
    { part: `${part}-floor`, stitches: n(`${part}-floor`) },
    { part: `${part}-left`, stitches: n(`${part}-side`) },
  ],
});
const shoulder = (at: "left" | "right") =>
  shaped("bind-off", at, { stitches: n("third"), times: 2, every: 2, start: 17 });
/** Neck and shoulder at the same time, the shoulder in the last rows. */
const frontSide = (outer: "left" | "right", inner: "left" | "right") =>
  rows(
    21,
    shaped("bind-off", inner, { stitches: 3, times: 1, every: 2, start: 1 }),
    shaped("bind-off", inner, { stitches: 2, times: 1, every: 2, start: 3 }),
    shaped("decrease", inner, { times: 4, every: 2, start: 6 }),
    shoulder(outer),
  );
const backSide = (outer: "left" | "right", inner: "left" | "right") =>
  rows(
    5,
    shaped("bind-off", outer, { stitches: n("third"), times: 2, every: 2, start: 1 }),
    shaped("decrease", inner, { times: 3, every: 1 }),
  );

/** A pullover with set-in sleeves, sloping shoulders and a round neck. */
export const setIn = madeGarment({
  name: "Set-in pullover",
  bust: [84, 96, 108],
  counts: {
    width: ["stitches", 94, 106, 118],
    "body-rows": ["rows", 90, 92, 94],
    underarm: ["stitches", 4, 5, 6],
    "armhole-times": ["stitches", 6, 8, 10],
    "front-rows": ["rows", 18, 18, 18],
    "back-rows": ["rows", 34, 34, 34],
    "front-side": ["stitches", 28, 30, 32],
    "front-floor": ["stitches", 14, 16, 18],
    "back-side": ["stitches", 22, 24, 26],
    "back-floor": ["stitches", 26, 28, 30],
    shoulder: ["stitches", 19, 21, 23],
    third: ["stitches", 6, 7, 7],
    cuff: ["stitches", 44, 46, 50],
    "sleeve-times": ["stitches", 12, 14, 16],
    upper: ["stitches", 68, 74, 82],
    "cap-times": ["stitches", 16, 17, 19],
    "sleeve-rows": ["rows", 100, 100, 102],
  },
  pieces: [
    {
      ...{ id: "front", label: "Front", parts: ["front"] },
      edges: [{ id: "front-left-side", part: "front", side: "left" }],
    },
    { id: "back", label: "Back", edges: [{ id: "back-right-side", part: "back", side: "right" }] },
    {
      ...{ id: "sleeve", label: "Sleeve", made: 2 },
      edges: [
        { id: "sleeve-left", part: "sleeve", side: "left" },
        { id: "sleeve-right", part: "sleeve", side: "right" },
      ],
    },
  ],
  steps: [
    ["front", castOn(n("width")), rows(15), rows(n("body-rows")), ...armhole, rows(n("front-rows")), divided("front")],
    ["front-floor", ends("front-neck")],
    ["front-left", frontSide("left", "right"), ends("front-left-shoulder")],
    ["front-right", frontSide("right", "left"), ends("front-right-shoulder")],
    ["back", castOn(n("width")), rows(15), rows(n("body-rows")), ...armhole, rows(n("back-rows")), divided("back")],
    ["back-floor", ends("back-neck")],
    ["back-left", backSide("left", "right"), ends("back-left-shoulder")],
    ["back-right", backSide("right", "left"), ends("back-right-shoulder")],
    [
      "sleeve",
      castOn(n("cuff")),
      rows(15),
      rows(n("sleeve-rows"), shaped("increase", "both", { times: n("sleeve-times"), every: 6 })),
      bindOff("both", n("underarm")),
      bindOff("both", 2),
      rows(n("cap-times", 2), shaped("decrease", "both", { times: n("cap-times"), every: 2 })),
      bindOff("both", 2, 2),
      ends("cap-top"),
    ],
  ],
  seams: [
    { a: { edge: "front-left-shoulder" }, b: { edge: "back-right-shoulder" } },
    { a: { edge: "sleeve-left" }, b: { edge: "sleeve-right" } },
  ],
  measurements: [
    { label: "Chest, around", terms: [[2, "width"]], on: { piece: "front", from: [0, 0.45], to: [1, 0.45] } },
    {
      label: "Length to the underarm",
      terms: [[1, "body-rows"]],
      on: { piece: "front", from: [0.1, 0], to: [0.1, 0.645] },
    },
    {
      label: "Armhole depth",
      terms: [[2, "armhole-times"]],
      on: { piece: "front", from: [0.16, 0.66], to: [0.16, 0.96] },
    },
    {
      label: "Neck width",
      terms: [[1, "back-floor"]],
      on: { from: ["front-right-shoulder", 0], to: ["front-left-shoulder", 1] },
    },
    {
      label: "Sleeve to the underarm",
      terms: [[1, "sleeve-rows"]],
      on: { piece: "sleeve", from: [0.5, 0], to: [0.5, 0.715] },
    },
    { label: "Upper arm, around", terms: [[1, "upper"]], on: { piece: "sleeve", from: [0, 0.71], to: [1, 0.71] } },
    { label: "Cuff, around", terms: [[1, "cuff"]], on: { piece: "sleeve", from: [0.18, 0], to: [0.82, 0] } },
  ],
});
