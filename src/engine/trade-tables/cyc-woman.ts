import { BODY } from "./body-measurements";
import { labelledSizes, type BodyTable } from "./body-table";

/** The Craft Yarn Council's chart of a woman's body, inches and centimetres as it prints them. From memory throughout. */
export const CYC_WOMAN: BodyTable = {
  id: "cyc-woman",
  label: "Example range for women: XS to 5X, after the Craft Yarn Council",
  source: "Craft Yarn Council, Standards & Guidelines for Crochet and Knitting, woman’s size chart",
  mark: "memory",
  unit: "in",
  unitWhy:
    "The chart prints inches and centimetres. The inches are used, at exactly 2.54 cm, for its centimetres are rounded from them to the half, and for 5X by more (62 in and 158 cm).",
  remarks: ["Cross back and back waist length from XL upward are the least certain."],
  sizes: labelledSizes(["XS", "S", "M", "L", "XL/1X", "2X", "3X", "4X", "5X"]),
  sizeBy: BODY.bust.id,
  rows: [
    {
      measurement: BODY.bust,
      printed: {
        in: [
          [28, 30],
          [32, 34],
          [36, 38],
          [40, 42],
          [44, 46],
          [48, 50],
          [52, 54],
          [56, 58],
          [60, 62],
        ],
        cm: [
          [71, 76],
          [81, 86],
          [91.5, 96.5],
          [101.5, 106.5],
          [111.5, 117],
          [122, 127],
          [132, 137],
          [142, 147],
          [152, 158],
        ],
      },
    },
    {
      measurement: BODY.neckToWrist,
      printed: {
        in: [
          [27, 27.5],
          [28, 28.5],
          [29, 29.5],
          [30, 30.5],
          [31, 31.5],
          [31.5, 32],
          [32.5, 33],
          [32.5, 33],
          [33, 33.5],
        ],
        cm: [
          [68.5, 70],
          [71, 72.5],
          [73.5, 75],
          [76, 77.5],
          [78.5, 80],
          [80, 81.5],
          [82.5, 84],
          [82.5, 84],
          [84, 85],
        ],
      },
    },
    {
      measurement: BODY.backWaistLength,
      printed: {
        in: [16.5, 17, 17.25, 17.5, 17.75, 18, 18, 18.5, 18.5],
        cm: [42, 43, 43.5, 44.5, 45, 45.5, 45.5, 47, 47],
      },
    },
    {
      measurement: BODY.crossBack,
      printed: {
        in: [[14, 14.5], [14.5, 15], [16, 16.5], [17, 17.5], 17.5, 18, 18, 18.5, 18.5],
        cm: [[35.5, 37], [37, 38], [40.5, 42], [43, 44.5], 44.5, 45.5, 45.5, 47, 47],
      },
    },
    {
      measurement: BODY.armLength,
      printed: {
        in: [16.5, 17, 17, 17.5, 17.5, 18, 18, 18.5, 18.5],
        cm: [42, 43, 43, 44.5, 44.5, 45.5, 45.5, 47, 47],
      },
    },
    {
      measurement: BODY.upperArm,
      printed: {
        in: [9.75, 10.25, 11, 12, 13.5, 15.5, 17, 18.5, 19.5],
        cm: [25, 26, 28, 30.5, 34.5, 39.5, 43, 47, 49.5],
      },
    },
    {
      measurement: BODY.armholeDepth,
      printed: {
        in: [
          [6, 6.5],
          [6.5, 7],
          [7, 7.5],
          [7.5, 8],
          [8, 8.5],
          [8.5, 9],
          [9, 9.5],
          [9.5, 10],
          [10, 10.5],
        ],
        cm: [
          [15.5, 16.5],
          [16.5, 17.5],
          [17.5, 19],
          [19, 20.5],
          [20.5, 21.5],
          [21.5, 23],
          [23, 24],
          [24, 25.5],
          [25.5, 26.5],
        ],
      },
    },
    {
      measurement: BODY.waist,
      printed: {
        in: [
          [23, 24],
          [25, 26.5],
          [28, 30],
          [32, 34],
          [36, 38],
          [40, 42],
          [44, 45],
          [46, 47],
          [49, 50],
        ],
        cm: [
          [58.5, 61],
          [63.5, 67.5],
          [71, 76],
          [81.5, 86.5],
          [91.5, 96.5],
          [101.5, 106.5],
          [111.5, 114],
          [116.5, 119],
          [124, 127],
        ],
      },
    },
    {
      measurement: BODY.hip,
      printed: {
        in: [
          [33, 34],
          [35, 36],
          [38, 40],
          [42, 44],
          [46, 48],
          [52, 53],
          [54, 55],
          [56, 57],
          [61, 62],
        ],
        cm: [
          [83.5, 86],
          [89, 91.5],
          [96.5, 101.5],
          [106.5, 111.5],
          [116.5, 122],
          [132, 134.5],
          [137, 139.5],
          [142, 144.5],
          [155, 157],
        ],
      },
    },
  ],
};
