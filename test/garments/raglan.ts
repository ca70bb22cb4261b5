import { castOn, ends, madeGarment, n, rows, shaped, type Doing } from "./made-garment";

const LINES = ["one", "two", "three", "four"] as const;

/** A pullover worked in the round from the neck, with four raglan lines. */
export const raglan = madeGarment({
  name: "Raglan from the neck",
  bust: [78, 88, 98],
  counts: {
    neck: ["stitches", 88, 92, 96],
    "line-one": ["stitches", 32, 34, 36],
    "line-two": ["stitches", 44, 46, 48],
    "line-three": ["stitches", 76, 80, 84],
    "raglan-times": ["stitches", 22, 24, 27],
    front: ["stitches", 76, 82, 90],
    sleeve: ["stitches", 56, 60, 66],
    underarm: ["stitches", 8, 10, 12],
    body: ["stitches", 168, 184, 204],
    "body-rows": ["rows", 95, 95, 100],
    arm: ["stitches", 64, 70, 78],
    "arm-times": ["stitches", 10, 11, 14],
    "arm-rows": ["rows", 108, 108, 110],
  },
  pieces: [
    { id: "yoke", label: "Yoke", parts: ["yoke", "back", "front"], start: "neck" },
    { id: "body", label: "Body", start: "neck" },
    { id: "sleeve", label: "Sleeve", parts: ["sleeve", "arm"], made: 2, start: "neck" },
  ],
  steps: [
    [
      "yoke",
      castOn(n("neck"), "round"),
      ...LINES.map((marker, index): Doing => ({
        ...{ do: "mark", marker },
        at: n(["line-one", "line-two", "line-three", "neck"][index] ?? "neck"),
      })),
      {
        ...{ do: "work", rows: n("raglan-times", 2) },
        shape: LINES.map((marker) => ({
          ...{ at: { marker }, stitches: 2, times: n("raglan-times"), as: "increase", every: 2 },
        })),
      },
      {
        do: "divide",
        into: [
          { part: "back", stitches: n("front") },
          { part: "sleeve", stitches: n("sleeve") },
          { part: "front", stitches: n("front") },
          { part: "sleeve", stitches: n("sleeve") },
        ],
      },
    ],
    [
      "body",
      {
        ...{ do: "join", as: "body", worked: "round", between: [n("underarm"), n("underarm")] },
        parts: [{ part: "back" }, { part: "front" }],
      },
      rows(n("body-rows")),
      ends("hem"),
    ],
    [
      "arm",
      { do: "join", as: "arm", worked: "round", between: [n("underarm")], parts: [{ part: "sleeve" }] },
      rows(n("arm-rows"), shaped("decrease", "both", { times: n("arm-times"), every: 7, start: 10 })),
      ends("cuff"),
    ],
  ],
  measurements: [
    { label: "Chest, around", terms: [[1, "body"]], on: { piece: "body", from: [0, 0.7], to: [1, 0.7] } },
    { label: "Length to the underarm", terms: [[1, "body-rows"]], on: { piece: "body", from: [0.2, 0], to: [0.2, 1] } },
    { label: "Yoke depth", terms: [[2, "raglan-times"]], on: { piece: "yoke", from: [0.5, 0], to: [0.5, 1] } },
    { label: "Neck, around", terms: [[1, "neck"]] },
    {
      label: "Sleeve to the underarm",
      terms: [[1, "arm-rows"]],
      on: { piece: "sleeve", from: [0.5, 0], to: [0.5, 1] },
    },
    { label: "Upper arm, around", terms: [[1, "arm"]], on: { piece: "sleeve", from: [0, 0.98], to: [1, 0.98] } },
  ],
});
