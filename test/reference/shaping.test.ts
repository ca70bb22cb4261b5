import { describe, expect, it } from "vitest";
import { gradingWarnings } from "@/engine/pattern";
import { pickUp, pickUpRate, pickUpTie } from "@/engine/shaping";
import { patternDocument } from "../factories/pattern";

describe("what hands have long done (common practice, no source)", () => {
  it("picks up 3 stitches for 4 rows along a knitted edge", () => {
    // Stocking stitch of 22 stitches and 30 rows, the same stitch picked up.
    const rate = pickUpRate({ stitchesPerCm: 2.2, rowsPerCm: 3 });
    expect(rate).toEqual({ stitches: 3, rows: 4 });
    expect(pickUp(80, rate).stitches).toBe(60);
  });

  it("works one stitch into every row end of a short crochet stitch", () => {
    // Single crochet (US), about as tall as wide.
    const rate = pickUpRate({ stitchesPerCm: 1.8, rowsPerCm: 1.8 });
    expect(rate).toEqual({ stitches: 1, rows: 1 });
    expect(pickUpTie({ stitches: "band", rows: "edge", rate })).toMatchObject({ per: 1, within: 0 });
  });

  it("joins 50 + 60 + 50 stitches as 160, a multiple of 10", () => {
    const joined = (yoke: number) =>
      patternDocument({
        counts: [
          { id: "yoke", label: "Yoke", fabric: "main", direction: "stitches", repeat: { of: 10, plus: 0 } },
          { id: "front", label: "Front", fabric: "main", direction: "stitches" },
          { id: "back", label: "Back", fabric: "main", direction: "stitches" },
        ],
        ties: [
          {
            count: "yoke",
            equals: [
              { times: 2, count: "front" },
              { times: 1, count: "back" },
            ],
          },
        ],
        measurements: [],
        sizes: [{ id: "one", label: "One", body: { bust: 90 } }],
        grading: { yoke: { one: yoke }, front: { one: 50 }, back: { one: 60 } },
      });
    expect(gradingWarnings(joined(160))).toEqual([]);
    expect(gradingWarnings(joined(170))).toHaveLength(1);
  });
});
