import { YARN_WEIGHTS, type Band, type Craft, type YarnWeight } from "./yarn-weights";

/** The table counts whole stitches: 20.4 are 20, and 20.5 may be 20 or 21. */
const HALF_A_STITCH = 0.5;

/**
 * Classes of yarn that are usually worked at a gauge. The bands overlap, so there can be several.
 *
 * @param stitchesOver10cm stitches over 10 cm, or over 4 in as the table has them, in the stitch that the class names.
 * @returns the classes, finest first; empty where the gauge is finer than any, or lies between two.
 * @see YARN_WEIGHT_SYSTEM, read.
 */
export function yarnClasses(craft: Craft, stitchesOver10cm: number): readonly YarnWeight[] {
  return YARN_WEIGHTS.filter((weight) => isWithin(weight[craft].stitches, stitchesOver10cm, HALF_A_STITCH));
}

/** True where a number lies in a band, or less than or just `slack` outside it. */
export function isWithin({ min, max }: Band, value: number, slack = 0): boolean {
  return (min === null || value >= min - slack) && (max === null || value <= max + slack);
}
