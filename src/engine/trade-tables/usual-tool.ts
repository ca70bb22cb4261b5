import { isWithin, yarnClasses } from "./yarn-classes";
import type { Band, Craft, YarnWeight } from "./yarn-weights";

/** How a fabric's tool compares with what is usual at its gauge. */
export interface ToolComparison {
  /** False where the tool lies in none of the usual bands, which lace and dense fabrics do on purpose. */
  readonly isUsual: boolean;
  readonly classes: readonly YarnWeight[];
  /** A sentence or two for the designer. */
  readonly says: string;
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
  const usual = classes.map((weight) => usualWords(weight, craft)).join("; ");
  const yours = isUsual ? "" : ` Yours is ${toolMm} mm, which may be meant.`;
  return { isUsual, classes, says: `Usual: ${usual}. A starting point to check.${yours}` };
}

function usualWords(weight: YarnWeight, craft: Craft): string {
  const { stitch, stitches, toolsMm } = weight[craft];
  const tool = craft === "knitting" ? "needle" : "hook";
  const sizes = toolsMm.map((band) => bandWords(band, " mm")).join(" or ");
  return `for ${bandWords(stitches)} stitches of ${stitchWords(stitch)} a ${sizes} ${tool} (${weight.name})`;
}

function stitchWords(stitch: string): string {
  return stitch === "stocking stitch" ? stitch : `${stitch} (US)`;
}

function bandWords({ least, most }: Band, unit = ""): string {
  if (least === null) return `${most}${unit} or fewer`;
  if (most === null) return `${least}${unit} or larger`;
  return least === most ? `${least}${unit}` : `${least}–${most}${unit}`;
}
