import { isWithin, yarnClasses } from "./yarn-classes";
import type { Band, Craft, YarnWeight } from "./yarn-weights";

/** Comparison of a fabric's needle or hook with the usual size for its gauge. */
export interface ToolComparison {
  /** False where the tool lies in none of the usual bands, which lace and dense fabrics do on purpose. */
  readonly isUsual: boolean;
  readonly classes: readonly YarnWeight[];
  /** A sentence or two for the designer. */
  readonly message: string;
}

/**
 * Compares a fabric's gauge and tool with the usual ones, as a starting point to check.
 *
 * @param fabric stitches over 10 cm, and the tool's size in mm.
 * @returns null where the table has no class for such a gauge.
 * @see YARN_WEIGHT_SYSTEM, read.
 */
export function compareTool({
  craft,
  stitchesOver10cm,
  toolMm,
}: {
  readonly craft: Craft;
  readonly stitchesOver10cm: number;
  readonly toolMm: number;
}): ToolComparison | null {
  const classes = yarnClasses(craft, stitchesOver10cm);
  if (classes.length === 0) return null;
  const isUsual = classes.some((weight) => weight[craft].toolsMm.some((band) => isWithin(band, toolMm)));
  const usual = classes.map((weight) => usualText(weight, craft)).join("; ");
  const yours = isUsual ? "" : ` Yours is ${toolMm} mm, which may be meant.`;
  return { isUsual, classes, message: `Usual: ${usual}. A starting point to check.${yours}` };
}

function usualText(weight: YarnWeight, craft: Craft): string {
  const { stitch, stitches, toolsMm } = weight[craft];
  const tool = craft === "knitting" ? "needle" : "hook";
  const sizes = toolsMm.map((band) => bandText(band, " mm")).join(" or ");
  return `for ${bandText(stitches)} stitches of ${stitchText(stitch)} a ${sizes} ${tool} (${weight.name})`;
}

function stitchText(stitch: string): string {
  return stitch === "stocking stitch" ? stitch : `${stitch} (US)`;
}

function bandText({ min, max }: Band, unit = ""): string {
  if (min === null) return `${max}${unit} or fewer`;
  if (max === null) return `${min}${unit} or larger`;
  return min === max ? `${min}${unit}` : `${min}–${max}${unit}`;
}
