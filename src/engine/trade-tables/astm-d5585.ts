import { BODY } from "./body-measurements";
import { labelledSizes, type BodyTable } from "./body-table";

const UNIT_WHY = "The table is in inches and fractions of them, taken at exactly 2.54 cm.";

/** ASTM D5585-11e1, Table 1, misses, as read on the standard's public page; its hip and arm rows were cut off there. */
export const ASTM_D5585_2011: BodyTable = {
  id: "astm-d5585-11",
  label: "ASTM D5585-11, misses: 00 to 20",
  source: "ASTM D5585-11e1, Table 1, misses (astm.org/Standards/D5585.htm)",
  mark: "read",
  unit: "in",
  unitWhy: UNIT_WHY,
  remarks: ["The public page shows the table without its hip and arm rows."],
  sizes: labelledSizes(["00", "0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20"]),
  sizeBy: BODY.bust.id,
  rows: [
    {
      measurement: BODY.bust,
      printed: { in: [31.125, 31.75, 33, 34.125, 35.25, 36.25, 37.25, 38.75, 40.375, 42.125, 44, 46] },
    },
    {
      measurement: BODY.waistCurvy,
      printed: { in: [23.875, 24.625, 25.375, 26.125, 27, 28, 29, 30.75, 32.5, 34.5, 36.75, 39] },
    },
    {
      measurement: BODY.waistStraight,
      printed: { in: [25.375, 26.125, 26.875, 27.625, 28.5, 29.5, 30.5, 32.25, 34, 36, 38.25, 40.5] },
    },
    {
      measurement: BODY.underBust,
      printed: { in: [25.75, 26.5, 27.25, 28, 29, 30, 31, 32.5, 34, 35.75, 37.625, 39.625] },
    },
    {
      measurement: BODY.upperChest,
      printed: { in: [31.75, 32.25, 33.25, 34.125, 35, 35.875, 36.75, 38, 39.25, 40.625, 42.25, 43.875] },
    },
    {
      measurement: BODY.shoulderGirth,
      printed: { in: [37.125, 37.75, 38.375, 39, 39.75, 40.5, 41.25, 42, 43, 44.25, 45.5, 46.875] },
    },
    {
      measurement: BODY.neckBase,
      printed: { in: [13.25, 13.5, 13.75, 14, 14.25, 14.625, 14.875, 15.125, 15.5, 15.75, 16, 16.375] },
    },
    {
      measurement: BODY.midNeck,
      printed: { in: [12.375, 12.625, 12.875, 13.125, 13.375, 13.625, 13.875, 14.25, 14.625, 15, 15.5, 16] },
    },
    {
      measurement: BODY.head,
      printed: { in: [21.25, 21.25, 21.5, 21.5, 21.75, 21.75, 22, 22, 22.25, 22.25, 22.5, 22.5] },
    },
  ],
};

/** The edition of 1995, from memory. */
export const ASTM_D5585_1995: BodyTable = {
  id: "astm-d5585-95",
  label: "Example range for misses: 2 to 20, after ASTM D5585-95",
  source: "ASTM D5585-95, misses",
  mark: "memory",
  unit: "in",
  unitWhy: UNIT_WHY,
  remarks: ["An edition that the standard’s owner has replaced."],
  sizes: labelledSizes(["2", "4", "6", "8", "10", "12", "14", "16", "18", "20"]),
  sizeBy: BODY.bust.id,
  rows: [
    { measurement: BODY.bust, printed: { in: [32, 33, 34, 35, 36, 37.5, 39, 40.5, 42.5, 44.5] } },
    { measurement: BODY.waist, printed: { in: [24, 25, 26, 27, 28, 29.5, 31, 32.5, 34.5, 36.5] } },
    { measurement: BODY.hip, printed: { in: [34.5, 35.5, 36.5, 37.5, 38.5, 40, 41.5, 43, 45, 47] } },
  ],
};
