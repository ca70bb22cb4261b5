import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { outlined, stitchRuns } from "./outlined";

/* A stitch is 0.5 cm wide, a row 0.4 cm high. All expected values are worked by hand. */

const end = (part: string): Step => ({ in: part, do: "end", how: "bind-off", edge: `${part}-top` });

describe("a length worked to a ruler", () => {
  const rowsOf = (measured: "working" | "blocked" | undefined) => {
    const rows = { length: "body", ...(measured === undefined ? {} : { measured }) };
    const { piece } = outlined(
      garmentPattern({
        pieces: [{ id: "front" }],
        lengths: [{ id: "body", label: "Body", cm: { small: 10, large: 12 }, measured: "working", growth: 1.1 }],
        steps: [
          { in: "front", do: "start", how: "cast-on", stitches: 20, worked: "flat" },
          { in: "front", do: "work", rows },
          end("front"),
        ],
      }),
    );
    return piece("front").steps.length;
  };

  it("is as many rows as come nearest to it once it is blocked", () => {
    // 10 × 1.1 = 11 cm are 27.5 rows, so 28; measured after blocking, 10 cm are 25.
    expect(rowsOf(undefined)).toBe(28);
    expect(rowsOf("working")).toBe(28);
    expect(rowsOf("blocked")).toBe(25);
  });
});

describe("rounds", () => {
  it.each(["round", "turned rounds", "spiral"] as const)(
    "worked as %s are as wide as half their stitches",
    (worked) => {
      const { piece, messages } = outlined(
        garmentPattern({
          craft: "crochet",
          pieces: [{ id: "hat", made: 3 }],
          steps: [
            { in: "hat", do: "start", how: "chain", stitches: 60, worked },
            { in: "hat", do: "work", rows: 12, shape: [{ at: "even", stitches: 10, times: 2, as: "decrease" }] },
            { in: "hat", do: "end", how: "fasten-off", edge: "crown" },
          ],
        }),
      );
      expect(messages).toEqual([]);
      // 2 decreases over 12 rounds fall in rounds 6 and 12.
      expect(stitchRuns(piece("hat").steps)).toEqual(["60 × 5", "50 × 6", "40 × 1"]);
      expect(piece("hat").steps[0]).toMatchObject({ circumferenceCm: 30, leftCm: -7.5, rightCm: 7.5 });
      // Three hats of 300 + 300 + 40; one hat's 640 × 0.2 cm².
      expect(piece("hat").stitches).toBe(3 * 640);
      expect(piece("hat").areaCm2).toBeCloseTo(128, 9);
    },
  );

  it("that are divided go on flat, front and back one over the other", () => {
    const { piece, messages } = outlined(
      garmentPattern({
        pieces: [{ id: "body", parts: ["body", "front", "back"] }],
        steps: [
          { in: "body", do: "start", how: "cast-on", stitches: 80, worked: "round" },
          { in: "body", do: "work", rows: 10 },
          { in: "body", do: "divide", into: ["front", "back"].map((part) => ({ part, stitches: 40 })) },
          { in: "front", do: "work", rows: 4 },
          { in: "back", do: "work", rows: 6 },
          end("front"),
          end("back"),
        ],
      }),
    );
    expect(messages).toEqual([]);
    const { steps, areaCm2, outline } = piece("body");
    expect(steps[10]?.spans).toEqual([
      [-10, 10],
      [-10, 10],
    ]);
    // (80 × 10 + 40 × 4 + 40 × 6) × 0.2 cm²; the outline goes up to 16 rows, 6.4 cm.
    expect(areaCm2).toBeCloseTo(240, 9);
    expect(Math.max(...outline.map(([, y]) => y))).toBeCloseTo(6.4, 9);
  });
});

describe("a band on a provisional cast-on", () => {
  it("picks up as many stitches as were cast on", () => {
    const band = (stitches: number) =>
      outlined(
        garmentPattern({
          pieces: [{ id: "scarf", edges: [{ id: "start", part: "scarf", side: "bottom" }] }, { id: "band" }],
          steps: [
            {
              id: "band",
              in: "band",
              do: "start",
              how: "pick-up",
              stitches,
              along: [{ edge: "start" }],
              worked: "flat",
            },
            end("band"),
            { in: "scarf", do: "start", how: "provisional", stitches: 31, worked: "flat" },
            end("scarf"),
          ],
        }),
      ).messages;
    expect(band(31)).toEqual([]);
    expect(band(30)).toEqual([
      "band: 30 stitches are to be picked up, and the edges give 31. Pick up 31, or change the rate or the edge.",
    ]);
  });
});
