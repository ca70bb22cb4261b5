import { BODY } from "./body-measurements";
import { labelledSizes, type BodyTable } from "./body-table";

const SOURCE = "EN 13402-3:2004, women";
const UNIT_WHY = "The standard is in centimetres.";

/** Letter codes of EN 13402-3 by bands of the bust. Most are borne out by a retail chart that works by the standard. */
export const EN_13402_LETTERS: BodyTable = {
  id: "en-13402-letters",
  label: "Example range for women: letters XXS to 5XL, after EN 13402-3",
  source: SOURCE,
  mark: "memory",
  unit: "cm",
  unitWhy: UNIT_WHY,
  remarks: [
    "S, M and XL to 4XL agree with a retail chart that works by the standard; for L that chart has 98–107 cm.",
    "XL begins 1 cm above the end of L; the other bands meet.",
  ],
  sizes: labelledSizes(["XXS", "XS", "S", "M", "L", "XL", "XXL", "3XL", "4XL", "5XL"]),
  sizeBy: BODY.bust.id,
  rows: [
    {
      measurement: BODY.bust,
      printed: {
        cm: [
          [66, 74],
          [74, 82],
          [82, 90],
          [90, 98],
          [98, 106],
          [107, 119],
          [119, 131],
          [131, 143],
          [143, 155],
          [155, 167],
        ],
      },
      marks: {
        "size-s": "secondary",
        "size-m": "secondary",
        "size-xl": "secondary",
        "size-xxl": "secondary",
        "size-3xl": "secondary",
        "size-4xl": "secondary",
      },
    },
  ],
};

const BUST_CM = [76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128, 134, 140, 146, 152];

/** The size scale of EN 13402-3: steps of 4 cm to a bust of 104, then of 6. */
export const EN_13402_SCALE: BodyTable = {
  id: "en-13402-scale",
  label: "Example range for women: bust 76 to 152 cm, after EN 13402-3",
  source: SOURCE,
  mark: "memory",
  unit: "cm",
  unitWhy: UNIT_WHY,
  remarks: ["The step of the bust changes from 4 to 6 cm above 104, and that of the hip from 4 to 5 cm."],
  sizes: labelledSizes(BUST_CM.map(String)),
  sizeBy: BODY.bust.id,
  rows: [
    { measurement: BODY.bust, printed: { cm: BUST_CM } },
    {
      measurement: BODY.waist,
      printed: { cm: [60, 64, 68, 72, 76, 80, 84, 88, 94, 100, 106, 112, 118, 124, 130, 136] },
    },
    {
      measurement: BODY.hip,
      printed: { cm: [84, 88, 92, 96, 100, 104, 108, 112, 117, 122, 127, 132, 137, 142, 147, 152] },
    },
  ],
};
