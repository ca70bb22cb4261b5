import type { Cell } from "@/engine/gaps";
import { rulerEstimate, type RulerEstimate, type RulerMark } from "@/ui/interval-ruler";
import type { CellState } from "../verdict-copy";

/** How a cell's estimate is drawn. */
export const MARKS: Readonly<Record<CellState, RulerMark>> = {
  off: "strong",
  holds: "full",
  leaning: "hollow",
  unsettled: "hollow",
  none: "faint",
};

/** A cell's estimate on a ruler that covers `reach` tolerances either side; undefined where nothing is known. */
export function cellEstimate(
  { gapCm, lowCm, highCm }: Pick<Cell, "gapCm" | "lowCm" | "highCm">,
  { toleranceCm, reach }: { readonly toleranceCm: number; readonly reach: number },
): RulerEstimate | undefined {
  if (gapCm === null || lowCm === null || highCm === null) return undefined;
  return rulerEstimate({ value: gapCm / toleranceCm, low: lowCm / toleranceCm, high: highCm / toleranceCm }, reach);
}
