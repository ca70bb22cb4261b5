import type { Mark } from "./provenance";

/** Where a way to take a measurement comes from; `practice`: common practice, no source. */
interface Definition {
  readonly source: string;
  readonly mark: Mark | "practice";
}

/** A measurement of the body, with our own sentence how to take it. */
export interface BodyMeasurement extends Definition {
  /** The same in every table, so that a document's targets can be told apart without reading its words. */
  readonly id: string;
  readonly label: string;
  readonly how: string;
}

const ISO_8559 = "ISO 8559-1:2017, in our own words";
const PRACTICE: Definition = { source: "common practice, no source", mark: "practice" };

/** Every body measurement that the published tables know. */
export const BODY = {
  bust: {
    id: "bust",
    label: "Bust",
    how: "Around the body over the fullest part, tape level, standing and breathing normally.",
    source: ISO_8559,
    mark: "secondary",
  },
  waist: {
    id: "waist",
    label: "Waist",
    how: "Around the body, tape level, midway between the lowest rib and the top of the hip bone.",
    source: ISO_8559,
    mark: "read",
  },
  waistCurvy: {
    id: "waist-curvy",
    label: "Waist, curvier figure",
    how: "Around the body at the waist, tape level.",
    ...PRACTICE,
  },
  waistStraight: {
    id: "waist-straight",
    label: "Waist, straighter figure",
    how: "Around the body at the waist, tape level.",
    ...PRACTICE,
  },
  hip: {
    id: "hip",
    label: "Hip",
    how: "Around the body, tape level, where the seat is fullest.",
    source: ISO_8559,
    mark: "memory",
  },
  upperArm: {
    id: "upper-arm",
    label: "Upper arm",
    how: "Around the fullest part of the upper arm, arm hanging, tape square to it.",
    source: ISO_8559,
    mark: "memory",
  },
  backWaistLength: {
    id: "back-waist-length",
    label: "Back waist length",
    how: "From the bone at the base of the neck down the back, following the body, to the waist.",
    source: ISO_8559,
    mark: "memory",
  },
  neckToWrist: {
    id: "neck-to-wrist",
    label: "Centre back neck to wrist",
    how: "From the bone at the base of the neck over the shoulder and down the slightly bent arm to the wrist.",
    ...PRACTICE,
  },
  crossBack: {
    id: "cross-back",
    label: "Cross back",
    how: "Straight across the back from one shoulder’s edge to the other’s.",
    ...PRACTICE,
  },
  armLength: {
    id: "arm-length",
    label: "Arm length to underarm",
    how: "Along the inside of the hanging arm, from the underarm to the wrist.",
    ...PRACTICE,
  },
  armholeDepth: {
    id: "armhole-depth",
    label: "Armhole depth",
    how: "From the top outer edge of the shoulder straight down to the level of the underarm.",
    ...PRACTICE,
  },
  head: {
    id: "head",
    label: "Head",
    how: "Around the head above the ears, where it is largest.",
    ...PRACTICE,
  },
  neckBase: {
    id: "neck-base",
    label: "Neck at its base",
    how: "Around the neck where it meets the shoulders.",
    ...PRACTICE,
  },
  midNeck: {
    id: "mid-neck",
    label: "Neck at mid height",
    how: "Around the neck halfway up, tape square to it.",
    ...PRACTICE,
  },
  shoulderGirth: {
    id: "shoulder-girth",
    label: "Around the shoulders",
    how: "Around the body and both hanging arms, where the shoulders are widest, tape level.",
    ...PRACTICE,
  },
  underBust: {
    id: "under-bust",
    label: "Under the bust",
    how: "Around the body just under the bust, tape level.",
    ...PRACTICE,
  },
  upperChest: {
    id: "upper-chest",
    label: "Upper chest",
    how: "Around the body high under the arms, above the fullest part, tape level.",
    ...PRACTICE,
  },
} as const satisfies Readonly<Record<string, BodyMeasurement>>;
