import { upgradePattern, type PatternDocument, type PatternDocument1 } from "@/engine/pattern";
import { patternDocument1 } from "./pattern";

const section = (stitches: string, rows: string) => ({ from: stitches, to: stitches, rows });

/** The test pattern with a body and a sleeve in a fabric of its own; the armhole is made of both. */
export function piecedPattern(): PatternDocument {
  return upgradePattern(piecedPattern1());
}

/** The same as it was in format 1. */
export function piecedPattern1(): PatternDocument1 {
  const base = patternDocument1();
  const measurement = (id: string, letter: string, counts: readonly string[]) => ({
    ...{ id, letter, label: id, how: "Across.", toleranceCm: 1 },
    terms: counts.map((count) => ({ times: 1, count })),
  });
  return patternDocument1({
    fabrics: [...base.fabrics, { id: "rib", label: "Rib", toolMm: 3, gauge: { stitches: 22, rows: 30 } }],
    bodyMeasurements: [{ id: "bust", label: "Bust", how: "Around." }],
    sizes: base.sizes.map((size, index) => ({ ...size, body: { ...size.body, arm: 28 + 4 * index } })),
    counts: [
      ...base.counts,
      { id: "sleeve-width", label: "Sleeve stitches", fabric: "rib", direction: "stitches" },
      { id: "sleeve-rows", label: "Sleeve rows", fabric: "rib", direction: "rows" },
      { id: "cuff", label: "Cuff", fabric: "rib", direction: "rows" },
    ],
    lengths: [{ id: "hem", label: "Hem", cm: 2 }],
    pieces: [
      {
        ...{ id: "body", label: "Body", fabric: "main", made: 2, yarn: "wool" },
        sections: [section("width", "height")],
      },
      {
        ...{ id: "sleeve", label: "Sleeve", fabric: "rib", made: 2, yarn: "wool" },
        sections: [section("sleeve-width", "sleeve-rows")],
      },
    ],
    measurements: [
      ...base.measurements,
      {
        ...measurement("upper-arm", "C", ["sleeve-width"]),
        target: { body: "arm", easeCm: 4 },
      },
      {
        ...measurement("sleeve-length", "D", []),
        terms: [
          { times: 1, count: "sleeve-rows" },
          { times: 1, count: "cuff" },
          { times: 1, length: "hem" },
        ],
      },
      measurement("armhole", "E", ["height", "sleeve-rows"]),
      { ...measurement("hem-height", "F", []), terms: [{ times: 1, length: "hem" }] },
    ],
    yarns: [{ id: "wool", label: "Wool", metresPerBall: 200, gramsPerBall: 50 }],
    grading: {
      ...base.grading,
      "sleeve-width": { small: 70, large: 80 },
      "sleeve-rows": { small: 120, large: 126 },
      cuff: { small: 12, large: 12 },
    },
  });
}
