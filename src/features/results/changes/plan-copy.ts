import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import type { PlannedCell, PlannedRow } from "./plan-outcome";
import { targetWords } from "../target-copy";
import { cellState, plain } from "../verdict-copy";

/** How many targets are met and how many reported cells come out as planned, before and after. */
export function summaryWords(rows: readonly PlannedRow[]): string {
  const cells = rows.flatMap((row) => row.cells);
  const targets = cells.filter(({ targetCm }) => targetCm !== null);
  const reported = cells.filter(({ before }) => cellState(before.cell) !== "none");
  const met = (side: "before" | "after") => targets.filter((cell) => cell[side].against === "within").length;
  const held = (side: "before" | "after") => reported.filter((cell) => cellState(cell[side].cell) === "holds").length;
  const ofTargets =
    targets.length === 0
      ? ""
      : `${met("after")} of ${targets.length} targets will be met (${met("before")} are now), and `;
  const text = `${ofTargets}${held("after")} of ${reported.length} measurements and sizes with reports come out as planned (${held("before")} do now).`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** How many measurements will meet their target, and how many do now. */
export function expectedWords(rows: readonly PlannedRow[]): string {
  const cells = rows.flatMap((row) => row.cells).filter(({ targetCm }) => targetCm !== null);
  if (cells.length === 0)
    return "No measurement of this pattern has a target, so this only shows the expected lengths.";
  const met = (side: "before" | "after") => cells.filter((cell) => cell[side].against === "within").length;
  const [before, after] = [met("before"), met("after")];
  const all = `${after === cells.length ? "all" : after} of ${cells.length} targets will be met within their tolerance`;
  return `${all.charAt(0).toUpperCase()}${all.slice(1)}; ${before} are now. Lengths are for a maker at the pattern’s gauge, with 90 % certainty between the small numbers.`;
}

/** One sentence for each measurement and size that will still miss its target. */
export function missedWords(rows: readonly PlannedRow[], unit: LengthUnit): string[] {
  return rows.flatMap(({ measurement, cells }) =>
    cells
      .filter(({ after }) => after.against === "missed")
      .map((cell) => `${measurement.label} in ${cell.size.label}: ${missedBy(cell, unit)}.`),
  );
}

function missedBy({ after, targetCm, toleranceCm }: PlannedCell, unit: LengthUnit): string {
  const words = targetWords({ expectedCm: after.expectedCm, targetCm, toleranceCm }, unit);
  const target = targetCm === null ? "" : ` of ${formatLength(targetCm, unit)}`;
  return `${words}${target} (tolerance ${plain(toleranceCm, unit)} ${unit})`;
}
