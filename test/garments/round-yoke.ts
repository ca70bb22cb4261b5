import { castOn, ends, madeGarment, n, rows, shaped, type Doing } from "./made-garment";

const underarm = (to: string, at: "even" | { marker: string }): Doing => ({ do: "hold", at, each: 10, to });

/** A pullover worked in the round from the hem, body and sleeves joined in a circular yoke. */
export const roundYoke = madeGarment({
  name: "Pullover with a round yoke",
  bust: [82, 92, 102],
  counts: {
    body: ["stitches", 176, 196, 216],
    half: ["stitches", 88, 98, 108],
    "body-rows": ["rows", 100, 102, 104],
    cuff: ["stitches", 44, 46, 50],
    "sleeve-times": ["stitches", 10, 11, 12],
    upper: ["stitches", 64, 68, 74],
    "yoke-rows": ["rows", 50, 52, 56],
    "yoke-fewer": ["stitches", 43, 49, 56],
    neck: ["stitches", 92, 96, 100],
  },
  pieces: [
    { id: "body", label: "Body" },
    { id: "sleeve", label: "Sleeve", made: 2 },
    { id: "yoke", label: "Yoke" },
  ],
  steps: [
    [
      "body",
      castOn(n("body"), "round"),
      rows(n("body-rows")),
      { do: "mark", marker: "side", at: n("half") },
      underarm("underarm-one", { marker: "side" }),
      underarm("underarm-two", "even"),
    ],
    [
      "sleeve",
      castOn(n("cuff"), "round"),
      rows(110, shaped("increase", "both", { times: n("sleeve-times"), every: 8, start: 16 })),
      underarm("sleeve-underarm", "even"),
    ],
    [
      "yoke",
      {
        ...{ do: "join", as: "yoke", worked: "round" },
        parts: [{ part: "body" }, { part: "sleeve", copy: 1 }, { part: "sleeve", copy: 2 }],
      },
      {
        ...{ do: "work", rows: n("yoke-rows") },
        shape: [{ at: "even", stitches: n("yoke-fewer"), times: 4, as: "decrease", every: 11, start: 12 }],
      },
      ends("neck"),
    ],
  ],
  measurements: [
    { label: "Chest, around", terms: [[1, "body"]], on: { piece: "body", from: [0, 0.9], to: [1, 0.9] } },
    { label: "Length to the underarm", terms: [[1, "body-rows"]], on: { piece: "body", from: [0.2, 0], to: [0.2, 1] } },
    { label: "Yoke depth", terms: [[1, "yoke-rows"]], on: { piece: "yoke", from: [0.5, 0], to: [0.5, 1] } },
    { label: "Neck, around", terms: [[1, "neck"]] },
    { label: "Upper arm, around", terms: [[1, "upper"]], on: { piece: "sleeve", from: [0, 0.98], to: [1, 0.98] } },
    { label: "Cuff, around", terms: [[1, "cuff"]], on: { piece: "sleeve", from: [0.16, 0], to: [0.84, 0] } },
  ],
});
