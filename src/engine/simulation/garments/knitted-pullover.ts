import {
  PATTERN_FORMAT_1,
  upgradePattern,
  type Count,
  type PatternDocument,
  type PatternDocument1,
} from "../../pattern";
import { roundGrading, type CountPlan } from "./round-grading";

const BUSTS_CM = [80, 86, 92, 98, 106, 114, 122, 132, 142];
const SIZES = ["xs", "s", "m", "l", "xl", "x2", "x3", "x4", "x5"];
const BODY = { stitches: 2.2, rows: 3 };
const RIB = { stitches: 2.4, rows: 3.2 };

/**
 * An invented knitted pullover in nine sizes with eight measurements and two fabrics, for calls with a known truth.
 *
 * Body measurements and proportions are made up.
 */
export function knittedPullover(): PatternDocument {
  const plans = countPlans();
  const pattern: PatternDocument1 = {
    format: PATTERN_FORMAT_1,
    name: "Fen pullover (invented)",
    craft: "knitting",
    fabrics: [
      { id: "body", label: "Plain knit", toolMm: 4, gauge: { stitches: 22, rows: 30 }, worked: "round" },
      {
        id: "rib",
        label: "Rib",
        toolMm: 3.5,
        gauge: { stitches: 24, rows: 32 },
        worked: "round",
        wornStretch: { across: 1.2, along: 1 },
      },
    ],
    sizes: SIZES.map((id, index) => ({ id, label: id.toUpperCase(), body: { bust: BUSTS_CM[index] ?? 0 } })),
    sizeBy: "bust",
    counts: plans.map(({ count }) => count),
    ties: [],
    allowances: [
      { id: "side-seam", label: "Side seam", cm: -0.6 },
      { id: "neck-band", label: "Neck band", cm: 2.5 },
      { id: "shoulder-seam", label: "Shoulder seam", cm: -1 },
    ],
    pieces: [
      {
        id: "trunk",
        label: "Trunk",
        fabric: "body",
        made: 1,
        yarn: "main",
        sections: [{ from: "trunk-stitches", to: "trunk-stitches", rows: "trunk-rows" }],
      },
      {
        id: "sleeve",
        label: "Sleeve",
        fabric: "body",
        made: 2,
        yarn: "main",
        sections: [{ from: "cuff-stitches", to: "sleeve-stitches", rows: "sleeve-rows" }],
      },
      {
        id: "hem",
        label: "Hem",
        fabric: "rib",
        made: 1,
        yarn: "main",
        sections: [{ from: "hem-stitches", to: "hem-stitches", rows: "rib-rows" }],
      },
    ],
    measurements: measurements(),
    yarns: [{ id: "main", label: "Main yarn", metresPerBall: 200, gramsPerBall: 100 }],
    grading: roundGrading(plans, SIZES),
  };
  return upgradePattern(pattern);
}

function countPlans(): CountPlan[] {
  const stitches = (id: string, lengthCm: (bust: number) => number, count: Partial<Count> = {}) =>
    plan({ id, label: id, fabric: "body", direction: "stitches", ...count }, BODY.stitches, lengthCm);
  const rows = (id: string, lengthCm: (bust: number) => number) =>
    plan({ id, label: id, fabric: "body", direction: "rows" }, BODY.rows, lengthCm);
  return [
    stitches("trunk-stitches", (bust) => bust + 10, { repeat: { of: 4, plus: 0 } }),
    stitches("sleeve-stitches", (bust) => 14 + 0.24 * bust),
    stitches("cuff-stitches", (bust) => 12 + 0.1 * bust),
    stitches("neck-stitches", (bust) => 14 + 0.06 * bust),
    stitches("shoulder-stitches", (bust) => 8 + 0.05 * bust),
    rows("trunk-rows", (bust) => 28 + 0.08 * bust),
    rows("yoke-rows", (bust) => 10 + 0.11 * bust),
    rows("sleeve-rows", (bust) => 36 + 0.05 * bust),
    plan(
      { id: "hem-stitches", label: "hem-stitches", fabric: "rib", direction: "stitches", repeat: { of: 4, plus: 0 } },
      RIB.stitches,
      (bust) => (bust + 4) / 1.2,
    ),
    plan({ id: "rib-rows", label: "rib-rows", fabric: "rib", direction: "rows" }, RIB.rows, () => 6),
  ];
}

function plan(count: Count, perCm: number, lengthCm: (bust: number) => number): CountPlan {
  return { count, perCm, lengthsCm: BUSTS_CM.map(lengthCm) };
}

function measurements(): PatternDocument["measurements"] {
  const how = "Lay the garment flat and measure straight.";
  return [
    {
      id: "bust",
      letter: "A",
      label: "Bust",
      how,
      toleranceCm: 2.5,
      girth: true,
      terms: [
        { times: 1, count: "trunk-stitches" },
        { times: 2, allowance: "side-seam" },
      ],
    },
    {
      id: "hem",
      letter: "B",
      label: "Hem, worn",
      how,
      toleranceCm: 2.5,
      girth: true,
      terms: [{ times: 1, count: "hem-stitches", stretched: true }],
    },
    {
      id: "length",
      letter: "C",
      label: "Length",
      how,
      toleranceCm: 1.5,
      terms: [
        { times: 1, count: "trunk-rows" },
        { times: 1, count: "yoke-rows" },
        { times: 1, count: "rib-rows" },
        { times: 1, allowance: "shoulder-seam" },
      ],
    },
    {
      id: "armhole",
      letter: "D",
      label: "Armhole depth",
      how,
      toleranceCm: 1,
      terms: [
        { times: 1, count: "yoke-rows" },
        { times: 1, allowance: "shoulder-seam" },
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
        { times: 1, allowance: "side-seam" },
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
        { times: 1, count: "rib-rows" },
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
        { times: -2, allowance: "neck-band" },
      ],
    },
    {
      id: "cross-back",
      letter: "H",
      label: "Cross back",
      how,
      toleranceCm: 1.25,
      terms: [
        { times: 2, count: "shoulder-stitches" },
        { times: 1, count: "neck-stitches" },
      ],
    },
  ];
}
