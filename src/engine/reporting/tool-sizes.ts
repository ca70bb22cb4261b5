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
