import type { Cell } from "@/engine/gaps";
import type { Measurement } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import type { FitArea } from "./fit-board";
import { answersWords, sizeEaseWords } from "./fit-copy";
import { formatExactLength } from "@/ui/format-exact-length";
import { cellEstimate, MARKS } from "../components/ruler-marks";
import { cellState, verdictWords } from "../verdict-copy";
import type { DrawnGap, FitTableContent } from "./fit-table";

/** How many tolerances each ruler beside the fit covers on either side. */
export const FIT_REACH = 3;

/** The difference of a measurement in a size as drawn beside the fit. @param size its label. */
export function drawnGap(
  cell: Cell,
  { measurement, unit, size }: { readonly measurement: Measurement; readonly unit: LengthUnit; readonly size: string },
): DrawnGap {
  return {
    mark: MARKS[cellState(cell)],
    estimate: cellEstimate(cell, { toleranceCm: measurement.toleranceCm, reach: FIT_REACH }),
    words: verdictWords(cell, { measurement, unit, size }),
  };
}

/** An area as it is drawn. */
export function fitTableContent(area: FitArea, unit: LengthUnit): FitTableContent {
  const { label, governing, rows, isGirth, ease } = area;
  const told = ease?.sizes.some((size) => sizeEaseWords(size, unit) !== null) === true ? ease : null;
  const easeOf = (id: string) => {
    const found = told?.sizes.find(({ size }) => size === id);
    if (found === undefined) return null;
    return { planned: formatExactLength(found.plannedCm, unit), right: sizeEaseWords(found, unit) ?? "not yet known" };
  };
  return {
    easeUnit: told === null ? null : unit,
    ...{ label, reach: FIT_REACH },
    ends: isGirth ? { tight: "tight", loose: "loose" } : { tight: "tight, short", loose: "loose, long" },
    beside: governing.map(({ letter, label: name }) => `${letter} ${name}`),
    rows: rows.map(({ size, counts, cells }) => ({
      ...{ size: size.label, counts, words: answersWords(counts, area), ease: easeOf(size.id) },
      gaps: governing.map((measurement, index) => {
        const cell = cells[index];
        return cell === undefined ? null : drawnGap(cell, { measurement, unit, size: size.label });
      }),
    })),
  };
}
