import { PATTERN_FORMAT_1, upgradePattern, type PatternDocument, type PatternDocument1 } from "@/engine/pattern";
import { saltmarshInstructions } from "./saltmarsh-instructions";
import {
  STITCHES_PER_CM,
  ROWS_PER_CM,
  NECK_BAND_CM,
  SHOULDER_SEAM_CM,
  SLEEVE_SEAM_CM,
  HEM_RIB_CM,
  CUFF_RIB_CM,
  SIZES,
  BUST_EASE_CM,
  UPPER_ARM_EASE_CM,
  SLEEVE_CM,
  NECK_DEPTH_CM,
  bySize,
  body,
  yoke,
  neck,
  shoulder,
  yokeRows,
  bodyRows,
  sleeveTop,
  sleeveCuff,
  neckRows,
  sleeveRows,
} from "./saltmarsh-numbers";

/*
 * An invented pattern: a tee worked in the round to the underarms, then back and front flat, with sleeves picked up at
 * the armholes. Bodies, eases and tolerances are made up for the demonstration and stand for nobody.
 */

const tee = { fabric: "stocking", made: 1, yarn: "main" } as const;

/** The demonstration's pattern as it is published, nine sizes. */
const saltmarsh: PatternDocument1 = {
  format: PATTERN_FORMAT_1,
  name: "Saltmarsh Tee (invented)",
  craft: "knitting",
  bodyMeasurements: [
    { id: "bust", label: "Bust", how: "Around the fullest part, tape level, breathing normally." },
    { id: "upper-arm", label: "Upper arm", how: "Around the fullest part of the arm, arm hanging." },
  ],
  fabrics: [
    {
      id: "stocking",
      label: "Stocking stitch",
      toolMm: 4,
      gauge: { stitches: STITCHES_PER_CM * 10, rows: ROWS_PER_CM * 10 },
    },
  ],
  sizes: SIZES.map(({ id, label, bust, upperArm }) => ({ id, label, body: { bust, "upper-arm": upperArm } })),
  sizeBy: "bust",
  counts: [
    { id: "body", label: "Body stitches", fabric: "stocking", direction: "stitches", repeat: { of: 4, plus: 0 } },
    { id: "yoke", label: "Back or front stitches", fabric: "stocking", direction: "stitches" },
    { id: "neck", label: "Neck stitches", fabric: "stocking", direction: "stitches" },
    { id: "shoulder", label: "Shoulder stitches", fabric: "stocking", direction: "stitches" },
    { id: "sleeve-top", label: "Sleeve stitches at the armhole", fabric: "stocking", direction: "stitches" },
    { id: "sleeve-cuff", label: "Sleeve stitches at the cuff", fabric: "stocking", direction: "stitches" },
    { id: "body-rows", label: "Body rounds above the rib", fabric: "stocking", direction: "rows", mayShrink: true },
    { id: "yoke-rows", label: "Armhole rows", fabric: "stocking", direction: "rows" },
    { id: "neck-rows", label: "Front neck rows", fabric: "stocking", direction: "rows" },
    { id: "sleeve-rows", label: "Sleeve rows above the rib", fabric: "stocking", direction: "rows" },
  ],
  ties: [
    { count: "body", equals: [{ times: 2, count: "yoke" }] },
    {
      count: "yoke",
      equals: [
        { times: 2, count: "shoulder" },
        { times: 1, count: "neck" },
      ],
    },
  ],
  lengths: [
    { id: "hem-rib", label: "Hem rib", cm: HEM_RIB_CM },
    { id: "cuff-rib", label: "Cuff rib", cm: CUFF_RIB_CM },
  ],
  allowances: [
    { id: "neck-band", label: "Neck band", cm: -NECK_BAND_CM },
    { id: "shoulder-seam", label: "Shoulder seam", cm: -SHOULDER_SEAM_CM },
    { id: "sleeve-seam", label: "Sleeve seam", cm: -SLEEVE_SEAM_CM },
  ],
  pieces: [
    {
      // The tube opened out, its middle half going on as the back; the front goes on from what is left at either side.
      id: "body",
      label: "Body and back",
      ...tee,
      start: "hem",
      sections: [
        { from: "body", to: "body", rows: "body-rows" },
        { from: "yoke", to: "yoke", rows: "yoke-rows" },
      ],
    },
    { id: "front", label: "Front", ...tee, start: "hem", sections: [{ from: "yoke", to: "yoke", rows: "yoke-rows" }] },
    {
      id: "sleeve",
      label: "Sleeve",
      ...tee,
      made: 2,
      start: "neck",
      sections: [
        {
          from: "sleeve-top",
          to: "sleeve-cuff",
          rows: "sleeve-rows",
          shaping: { stitches: 1, edges: "both", everyOther: true },
        },
      ],
    },
  ],
  measurements: [
    {
      id: "bust",
      letter: "A",
      label: "Bust",
      how: "Lay the tee flat, measure from side to side 3 cm below the underarms, and double it.",
      toleranceCm: 2,
      girth: true,
      terms: [{ times: 1, count: "body" }],
      target: { body: "bust", easeCm: BUST_EASE_CM },
      on: { piece: "body", from: [0, 0.47], to: [1, 0.47] },
    },
    {
      id: "hem-width",
      letter: "B",
      label: "Width above the hem rib",
      how: "Lay the tee flat and measure from side to side just above the rib. Do not double it.",
      toleranceCm: 1,
      terms: [{ times: 0.5, count: "body" }],
      target: { body: "bust", share: 0.5, easeCm: BUST_EASE_CM / 2 },
      on: { piece: "body", from: [0.25, 0.05], to: [0.75, 0.05] },
    },
    {
      id: "length",
      letter: "C",
      label: "Length",
      how: "From the top of the shoulder beside the neck straight down to the hem.",
      toleranceCm: 1.5,
      terms: [
        { times: 1, length: "hem-rib" },
        { times: 1, count: "body-rows" },
        { times: 1, count: "yoke-rows" },
        { times: 1, allowance: "shoulder-seam" },
      ],
      target: { cm: bySize((size) => size.length) },
      on: { piece: "body", from: [0.33, 0], to: [0.33, 1] },
    },
    {
      id: "armhole",
      letter: "D",
      label: "Armhole depth",
      how: "From the shoulder seam straight down to the underarm.",
      toleranceCm: 1,
      terms: [
        { times: 1, count: "yoke-rows" },
        { times: 1, allowance: "shoulder-seam" },
      ],
      target: { cm: bySize((size) => size.armhole) },
      on: { piece: "body", from: [0.7, 1], to: [0.7, 0.57] },
    },
    {
      id: "upper-arm",
      letter: "E",
      label: "Upper arm",
      how: "Lay the sleeve flat, measure across it at the armhole, and double it.",
      toleranceCm: 1.5,
      girth: true,
      terms: [
        { times: 1, count: "sleeve-top" },
        { times: 1, allowance: "sleeve-seam" },
      ],
      target: { body: "upper-arm", easeCm: UPPER_ARM_EASE_CM },
      on: { piece: "sleeve", from: [0, 0.9], to: [1, 0.9] },
    },
    {
      id: "sleeve-length",
      letter: "F",
      label: "Sleeve length",
      how: "From the armhole straight down the middle of the sleeve to the cuff's edge.",
      toleranceCm: 1,
      terms: [
        { times: 1, count: "sleeve-rows" },
        { times: 1, length: "cuff-rib" },
      ],
      target: { cm: bySize(() => SLEEVE_CM) },
      on: { piece: "sleeve", from: [0.5, 1], to: [0.5, 0] },
    },
    {
      id: "neck-width",
      letter: "G",
      label: "Neck width",
      how: "Straight across the opening at the shoulders, inside the band.",
      toleranceCm: 1,
      terms: [
        { times: 1, count: "neck" },
        { times: 2, allowance: "neck-band" },
      ],
      target: { cm: bySize((size) => size.neck) },
      on: { piece: "body", from: [0.38, 0.96], to: [0.62, 0.96] },
    },
    {
      id: "neck-depth",
      letter: "H",
      label: "Front neck depth",
      how: "From the line between the shoulders down to the upper edge of the band at centre front.",
      toleranceCm: 1,
      terms: [
        { times: 1, count: "neck-rows" },
        { times: 1, allowance: "neck-band" },
      ],
      target: { cm: bySize(() => NECK_DEPTH_CM) },
      on: { piece: "front", from: [0.5, 1], to: [0.5, 0.6] },
    },
  ],
  yarns: [
    { id: "main", label: "Invented sport-weight wool", colour: "reed green", metresPerBall: 160, gramsPerBall: 50 },
  ],
  grading: {
    body: bySize(body),
    yoke: bySize(yoke),
    neck: bySize(neck),
    shoulder: bySize(shoulder),
    "sleeve-top": bySize(sleeveTop),
    "sleeve-cuff": bySize(sleeveCuff),
    "body-rows": bySize(bodyRows),
    "yoke-rows": bySize(yokeRows),
    "neck-rows": bySize(() => neckRows),
    "sleeve-rows": bySize(() => sleeveRows),
  },
  instructions: saltmarshInstructions,
};

/** The demonstration's pattern as it is published, nine sizes. */
export const saltmarshPattern: PatternDocument = upgradePattern(saltmarsh);
