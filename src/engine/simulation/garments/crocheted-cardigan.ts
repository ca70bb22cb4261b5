import {
  PATTERN_FORMAT_1,
  upgradePattern,
  type Count,
  type PatternDocument,
  type PatternDocument1,
} from "../../pattern";
import { roundGrading, type CountPlan } from "./round-grading";

const BUSTS_CM = [82, 90, 98, 108, 120, 132, 146];
const SIZES = ["s", "m", "l", "xl", "x2", "x3", "x4"];
const GAUGE = { stitches: 1.6, rows: 1.1 };

/**
 * An invented crocheted cardigan in seven sizes with seven measurements and one fabric, for calls with a known truth.
 *
 * Body measurements and proportions are made up.
 */
export function crochetedCardigan(): PatternDocument {
  const plans = countPlans();
  const pattern: PatternDocument1 = {
    format: PATTERN_FORMAT_1,
    name: "Sedge cardigan (invented)",
    craft: "crochet",
    fabrics: [{ id: "main", label: "Half treble", toolMm: 5, gauge: { stitches: 16, rows: 11 }, worked: "flat" }],
    sizes: SIZES.map((id, index) => ({ id, label: id.toUpperCase(), body: { bust: BUSTS_CM[index] ?? 0 } })),
    sizeBy: "bust",
    counts: plans.map(({ count }) => count),
    ties: [],
    allowances: [
      { id: "front-band", label: "Front band", cm: 3 },
      { id: "hem-edge", label: "Hem edging", cm: 2 },
      { id: "cuff-edge", label: "Cuff edging", cm: 2 },
      { id: "seam", label: "Seam", cm: -0.5 },
    ],
    pieces: [
      {
        id: "back",
        label: "Back",
        fabric: "main",
        made: 1,
        yarn: "main",
        sections: [{ from: "back-stitches", to: "back-stitches", rows: "body-rows" }],
      },
      {
        id: "front",
        label: "Front",
        fabric: "main",
        made: 2,
        yarn: "main",
        sections: [{ from: "front-stitches", to: "front-stitches", rows: "body-rows" }],
      },
      {
        id: "sleeve",
        label: "Sleeve",
        fabric: "main",
        made: 2,
        yarn: "main",
        sections: [{ from: "cuff-stitches", to: "sleeve-stitches", rows: "sleeve-rows" }],
      },
    ],
    measurements: measurements(),
    yarns: [{ id: "main", label: "Main yarn", metresPerBall: 150, gramsPerBall: 100 }],
    grading: roundGrading(plans, SIZES),
  };
  return upgradePattern(pattern);
}

function countPlans(): CountPlan[] {
  const stitches = (id: string, lengthCm: (bust: number) => number) =>
    plan({ id, label: id, fabric: "main", direction: "stitches" }, GAUGE.stitches, lengthCm);
  const rows = (id: string, lengthCm: (bust: number) => number) =>
    plan({ id, label: id, fabric: "main", direction: "rows" }, GAUGE.rows, lengthCm);
  return [
    stitches("back-stitches", (bust) => bust / 2 + 5),
    stitches("front-stitches", (bust) => bust / 4 + 2),
    stitches("sleeve-stitches", (bust) => 16 + 0.25 * bust),
    stitches("cuff-stitches", (bust) => 16 + 0.08 * bust),
    stitches("neck-stitches", (bust) => 12 + 0.06 * bust),
    rows("body-rows", (bust) => 46 + 0.1 * bust),
    rows("armhole-rows", (bust) => 11 + 0.1 * bust),
    rows("sleeve-rows", (bust) => 38 + 0.04 * bust),
  ];
}

function plan(count: Count, perCm: number, lengthCm: (bust: number) => number): CountPlan {
  return { count, perCm, lengthsCm: BUSTS_CM.map(lengthCm) };
}

function measurements(): PatternDocument["measurements"] {
  const how = "Lay the garment flat, closed, and measure straight.";
  return [
    {
      id: "bust",
      letter: "A",
      label: "Bust, closed",
      how,
      toleranceCm: 2.5,
      girth: true,
      terms: [
        { times: 1, count: "back-stitches" },
        { times: 2, count: "front-stitches" },
        { times: 1, allowance: "front-band" },
        { times: 4, allowance: "seam" },
      ],
    },
    {
      id: "back",
      letter: "B",
      label: "Back width",
      how,
      toleranceCm: 1.5,
      terms: [
        { times: 1, count: "back-stitches" },
        { times: 2, allowance: "seam" },
      ],
    },
    {
      id: "length",
      letter: "C",
      label: "Length",
      how,
      toleranceCm: 1.5,
      terms: [
        { times: 1, count: "body-rows" },
        { times: 1, allowance: "hem-edge" },
        { times: 1, allowance: "seam" },
      ],
    },
    {
      id: "armhole",
      letter: "D",
      label: "Armhole depth",
      how,
      toleranceCm: 1.25,
      terms: [
        { times: 1, count: "armhole-rows" },
        { times: 1, allowance: "seam" },
      ],
    },
    {
      id: "upper-arm",
      letter: "E",
      label: "Upper arm",
      how,
      toleranceCm: 1.25,
      girth: true,
      terms: [
        { times: 1, count: "sleeve-stitches" },
        { times: 2, allowance: "seam" },
      ],
    },
    {
      id: "sleeve",
      letter: "F",
      label: "Sleeve length",
      how,
      toleranceCm: 1.5,
      terms: [
        { times: 1, count: "sleeve-rows" },
        { times: 1, allowance: "cuff-edge" },
      ],
    },
    {
      id: "neck",
      letter: "G",
      label: "Neck width",
      how,
      toleranceCm: 1,
      terms: [
        { times: 1, count: "neck-stitches" },
        { times: -2, allowance: "front-band" },
      ],
    },
  ];
}
