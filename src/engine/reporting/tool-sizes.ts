import type { PatternDocument } from "../pattern";
import { readTool } from "../tables/read-cell";
import { readToolSize } from "../tables/read-tool-size";
import type { ReadText } from "./form";

/** Sizes in which needles and hooks are sold, mm (from memory). */
const TOOL_SIZES_MM = [
  1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 3.75, 4, 4.5, 5, 5.5, 6, 6.5, 7, 8, 9, 10, 12, 15, 20, 25,
] as const;

/**
 * The next size of needle or hook: one size at a time, and then a new swatch (common practice, no source).
 *
 * @param toolMm the size used, mm; need not be a size that is sold.
 * @returns mm, null where no further size is sold.
 */
export function nextTool(toolMm: number, direction: "smaller" | "larger"): number | null {
  const found =
    direction === "smaller"
      ? TOOL_SIZES_MM.findLast((size) => size < toolMm)
      : TOOL_SIZES_MM.find((size) => size > toolMm);
  return found ?? null;
}

/** Whether needles or hooks of this size are sold. */
export function isSold(toolMm: number): boolean {
  return TOOL_SIZES_MM.some((size) => size === toolMm);
}

/** Thinner hooks are steel, mm; their US numbers fall as hooks grow, and differ from maker to maker (from memory). */
const STEEL_BELOW_MM = 2;

/** Size of the tool of a swatch, mm. @param patternMm the fabric's own, undefined where the fabric is not known. */
export function readSwatchTool(
  text: string,
  { craft, patternMm = STEEL_BELOW_MM }: { readonly craft: PatternDocument["craft"]; readonly patternMm?: number },
): ReadText<number> {
  return craft === "crochet" && patternMm < STEEL_BELOW_MM ? readTool(text) : readToolSize(text, craft);
}
