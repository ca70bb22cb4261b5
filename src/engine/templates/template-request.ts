import type { PatternDocument } from "../pattern";
import type { TableSizes } from "../trade-tables";

export const TEMPLATE_IDS = ["drop-shoulder", "tank", "vest", "set-in"] as const;
export type TemplateId = (typeof TEMPLATE_IDS)[number];

export const SLEEVES = ["long", "elbow", "short"] as const;
export type SleeveLength = (typeof SLEEVES)[number];

/** What a designer says of a garment before it has any number. Lengths in cm. */
export interface TemplateRequest extends TableSizes {
  readonly template: TemplateId;
  readonly name: string;
  readonly craft: PatternDocument["craft"];
  /** Washed. */
  readonly gauge: { readonly stitches: number; readonly rows: number; readonly overCm: number };
  readonly toolMm: number;
  /** Finished bust less body bust; below 0 for a close fit. */
  readonly easeCm: number;
  /** From the lower edge to the underarm, in every size. */
  readonly lengthCm: number;
  /** Of the edgings at hem and cuffs, part of the lengths. */
  readonly edgingCm: number;
  readonly sleeve: SleeveLength;
  /** Stitches of the stitch pattern: body widths are multiples of it, doubled where odd, so that halves match; 1 for none. */
  readonly repeat: number;
}

/** What a template says of itself in lists, and what it starts from. */
export interface TemplateWords {
  readonly id: TemplateId;
  readonly label: string;
  readonly says: string;
  readonly hasSleeves: boolean;
  readonly easeCm: number;
}

/** The eases are common practice, no source. */
export const TEMPLATES: readonly TemplateWords[] = [
  {
    id: "drop-shoulder",
    label: "Drop-shoulder pullover",
    says: "Straight front and back, round neck, sleeves sewn in straight.",
    hasSleeves: true,
    easeCm: 15,
  },
  {
    id: "tank",
    label: "Tank",
    says: "Narrow straps, deep armholes, a scooped neck.",
    hasSleeves: false,
    easeCm: 4,
  },
  {
    id: "vest",
    label: "Slipover",
    says: "A vest to the shoulder’s edge, with a V-neck.",
    hasSleeves: false,
    easeCm: 8,
  },
  {
    id: "set-in",
    label: "Set-in sleeve pullover",
    says: "Shaped armholes and sleeve caps, round neck.",
    hasSleeves: true,
    easeCm: 8,
  },
];
