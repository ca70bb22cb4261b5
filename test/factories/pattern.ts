import { createDraft, type PatternDraft } from "@/engine/editing";
import {
  PATTERN_FORMAT_1,
  upgradePattern,
  type PatternDocument,
  type PatternDocument1,
  type Swatch,
  type Tester,
} from "@/engine/pattern";

/**
 * A scarf-simple pattern in two sizes with round numbers: 100 stitches at 20 to 10 cm are 50 cm.
 *
 * @param change members that stand in place of the simple ones; pieces of format 1 become those of its garment.
 */
export function patternDocument(change: Partial<PatternDocument> & { pieces?: Pieces } = {}): PatternDocument {
  const { pieces, ...rest } = change;
  const base = patternDocument1(pieces === undefined ? {} : { pieces });
  const { craft = base.craft, fabrics = base.fabrics } = rest;
  return { ...upgradePattern({ ...base, craft, fabrics }), ...rest };
}

type Pieces = PatternDocument1["pieces"];

/** The same pattern as it was in format 1. */
export function patternDocument1(change: Partial<PatternDocument1> = {}): PatternDocument1 {
  return {
    format: PATTERN_FORMAT_1,
    name: "Test vest",
    craft: "crochet",
    fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 } }],
    sizes: [
      { id: "small", label: "S", body: { bust: 90 } },
      { id: "large", label: "L", body: { bust: 110 } },
    ],
    sizeBy: "bust",
    counts: [
      { id: "width", label: "Width", fabric: "main", direction: "stitches" },
      { id: "height", label: "Height", fabric: "main", direction: "rows" },
    ],
    ties: [],
    allowances: [{ id: "edging", label: "Edging", cm: 1 }],
    pieces: [],
    measurements: [
      {
        id: "bust",
        letter: "A",
        label: "Bust",
        how: "Around.",
        toleranceCm: 2,
        girth: true,
        terms: [
          { times: 2, count: "width" },
          { times: 2, allowance: "edging" },
        ],
        target: { body: "bust", easeCm: 10 },
      },
      {
        id: "length",
        letter: "B",
        label: "Length",
        how: "Down.",
        toleranceCm: 1,
        terms: [{ times: 1, count: "height" }],
      },
    ],
    yarns: [],
    grading: { width: { small: 98, large: 118 }, height: { small: 100, large: 110 } },
    ...change,
  };
}

/** A tester of the small size who is on gauge, worked the pattern's counts and has measured nothing. */
export function tester(change: Partial<Tester> = {}): Tester {
  return { id: "tester-1", size: "small", swatches: [swatch()], readings: [], yarn: [], ...change };
}

/** A washed swatch of the main fabric that shows exactly the stated gauge. */
export function swatch(change: Partial<Swatch> = {}): Swatch {
  return { fabric: "main", toolMm: 4, stitches: 20, acrossCm: 10, rows: 25, alongCm: 10, washed: true, ...change };
}

/** A draft of that pattern in which a width was typed for the small size. */
export function widthTyped(text: string): PatternDraft {
  const draft = createDraft(patternDocument(), "cm");
  const { grading } = draft.pattern;
  return {
    ...draft,
    pattern: { ...draft.pattern, grading: { ...grading, width: { ...grading?.["width"], small: text } } },
  };
}
