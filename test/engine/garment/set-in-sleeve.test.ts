import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { outlined, stitchRuns } from "./outlined";

/* A stitch is 0.5 cm wide, a row 0.4 cm high. All expected values are worked by hand. */

const sleeve: readonly Step[] = [
  { in: "sleeve", do: "start", how: "cast-on", stitches: 40, worked: "flat" },
  { in: "sleeve", do: "work", rows: 60, shape: [{ at: "both", stitches: 1, times: 10, as: "increase", every: 6 }] },
  { id: "cap-base", in: "sleeve", do: "bind-off", at: "both", each: 4 },
  {
    id: "cap",
    in: "sleeve",
    do: "work",
    rows: 30,
    shape: [{ at: "both", stitches: 1, times: 15, as: "decrease", every: 2 }],
  },
  { id: "cap-top", in: "sleeve", do: "bind-off", at: "both", each: 3, times: 2 },
  { in: "sleeve", do: "end", how: "bind-off", edge: "sleeve-top" },
];

const back: readonly Step[] = [
  { in: "back", do: "start", how: "cast-on", stitches: 80, worked: "flat" },
  { in: "back", do: "work", rows: 60 },
  { id: "underarm", in: "back", do: "bind-off", at: "both", each: 4 },
  {
    id: "armhole",
    in: "back",
    do: "work",
    rows: 40,
    shape: [{ at: "both", stitches: 1, times: 5, as: "decrease", every: 2 }],
  },
  { in: "back", do: "end", how: "bind-off", edge: "back-top" },
];

function garment(within: number) {
  const pieces = [
    {
      ...{ id: "sleeve", made: 2 },
      edges: [
        { id: "cap-edge", part: "sleeve", side: "right" as const, steps: ["cap-base", "cap-top"] as [string, string] },
      ],
    },
    {
      ...{ id: "back" },
      edges: [
        {
          id: "armhole-edge",
          part: "back",
          side: "right" as const,
          steps: ["underarm", "armhole"] as [string, string],
        },
      ],
    },
  ];
  const seams = [{ a: { edge: "cap-edge", copy: 2 }, b: { edge: "armhole-edge" }, within }];
  return outlined(garmentPattern({ pieces, steps: [...sleeve, ...back], seams }));
}

describe("a set-in sleeve", () => {
  it("grows to the underarm, and its cap is bound off and shaped at both edges", () => {
    const { piece } = garment(0.2);
    // 40 + 20 = 60, then 56, 52, then 15 times 2 fewer: 22, and 4 times 3 fewer: 10.
    const runs = stitchRuns(piece("sleeve").steps);
    expect(runs.slice(0, 3)).toEqual(["40 × 5", "42 × 6", "44 × 6"]);
    expect(runs.slice(10, 15)).toEqual(["60 × 1", "56 × 1", "52 × 2", "50 × 2", "48 × 2"]);
    expect(runs.slice(-5)).toEqual(["22 × 1", "19 × 1", "16 × 1", "13 × 1", "10 × 1"]);
  });

  it("is eased into its armhole as far as the seam allows", () => {
    // Right edge of the cap, from row end to row end: 4 bound off, 2 cm across and 0.4 up: √4.16 = 2.0396; row 62 and 15 more
    // of the 30, straight: 16 × 0.4 = 6.4; 15 decreases, √(0.25 + 0.16) = 0.6403 each: 9.6047; bind-offs of 3 in rows 93 and
    // 95, √(2.25 + 0.16) = 1.5524 each: 3.1048; rows 94 and 96: 0.8. In all 21.9491 cm.
    // Armhole: 2.0396, 36 straight rows 14.4 (row 62 and 35 of the 40), 5 decreases 3.2016: 19.6412 cm. Apart 10.5 % of the cap.
    expect(garment(0.11).messages).toEqual([]);
    expect(garment(0.1).messages).toEqual([
      "seam 0: “cap-edge” is 21.9 cm long and “armhole-edge” 19.6 cm; that is 10.5 % apart, and 10 % can be eased in. Make them more alike, or allow more.",
    ]);
  });
});
