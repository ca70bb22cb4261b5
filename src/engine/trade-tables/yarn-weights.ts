import type { PatternDocument } from "../pattern";
import type { Provenance } from "./provenance";

export type Craft = PatternDocument["craft"];

/** From the least to the most, null where the table leaves the end open. */
export interface Band {
  readonly min: number | null;
  readonly max: number | null;
}

/** What a class of yarn is usually worked with in one craft. */
interface UsualGauge {
  /** The stitch that the stitches are counted in; crochet by its US name. */
  readonly stitch: "stocking stitch" | "single crochet" | "double crochet";
  /** Stitches over 4 in, which the trade writes as 10 cm. */
  readonly stitches: Band;
  /** Needles or hooks, mm; more than one band where two kinds are named. */
  readonly toolsMm: readonly Band[];
}

export interface YarnWeight {
  readonly number: number;
  readonly name: string;
  readonly knitting: UsualGauge;
  readonly crochet: UsualGauge;
}

/** Where the classes come from. Of editions that differ, the later one's figures are used. */
export const YARN_WEIGHT_SYSTEM: Provenance & { readonly remarks: readonly string[] } = {
  source: "Craft Yarn Council, Standard Yarn Weight System",
  mark: "read",
  remarks: [
    "Guidelines only, the most commonly used gauges; for lace, follow the pattern.",
    "Another year’s table has 6–9 stitches and 9–16 mm hooks for crochet in class 6, 5 or fewer and 16 mm or larger in class 7.",
  ],
};

const band = (min: number | null, max: number | null): Band => ({ min, max });

type Ends = readonly [least: number | null, most: number | null];

function weight(
  number: number,
  name: string,
  ends: { knit: Ends; needle: Ends; crochet: Ends; hook: Ends },
): YarnWeight {
  return {
    number,
    name,
    knitting: { stitch: "stocking stitch", stitches: band(...ends.knit), toolsMm: [band(...ends.needle)] },
    crochet: { stitch: "single crochet", stitches: band(...ends.crochet), toolsMm: [band(...ends.hook)] },
  };
}

/** The eight classes, finest first. */
export const YARN_WEIGHTS: readonly YarnWeight[] = [
  {
    number: 0,
    name: "Lace",
    knitting: { stitch: "stocking stitch", stitches: band(33, 40), toolsMm: [band(1.5, 2.25)] },
    crochet: { stitch: "double crochet", stitches: band(32, 42), toolsMm: [band(1.4, 1.6), band(2.25, 2.25)] },
  },
  weight(1, "Super Fine", { knit: [27, 32], needle: [2.25, 3.25], crochet: [21, 32], hook: [2.25, 3.5] }),
  weight(2, "Fine", { knit: [23, 26], needle: [3.25, 3.75], crochet: [16, 20], hook: [3.5, 4.5] }),
  weight(3, "Light", { knit: [21, 24], needle: [3.75, 4.5], crochet: [12, 17], hook: [4.5, 5.5] }),
  weight(4, "Medium", { knit: [16, 20], needle: [4.5, 5.5], crochet: [11, 14], hook: [5.5, 6.5] }),
  weight(5, "Bulky", { knit: [12, 15], needle: [5.5, 8], crochet: [8, 11], hook: [6.5, 9] }),
  weight(6, "Super Bulky", { knit: [7, 11], needle: [8, 12.75], crochet: [7, 9], hook: [9, 15] }),
  weight(7, "Jumbo", { knit: [null, 6], needle: [12.75, null], crochet: [null, 6], hook: [15, null] }),
];
