import { csvText } from "@/server/csv";
import type { TesterBoard } from "./habits-board";

/** Every tester's drifts and comparisons for a spreadsheet, a line per measurement. */
export function testersCsv({ rows }: TesterBoard): string {
  const lines = rows.flatMap(({ name, size, driftAcross, driftAlong, comparisons }) =>
    comparisons.map(({ measurement, h, standing, k, scatter }) => ({
      tester: name,
      size,
      "wider than swatch %": percent(driftAcross),
      "longer than swatch %": percent(driftAlong),
      letter: measurement.letter,
      measurement: measurement.label,
      "Mandel h": h ?? "",
      "h is": h === null ? "" : standing,
      "Mandel k": k ?? "",
      "k is": k === null ? "" : scatter,
    })),
  );
  return csvText(lines);
}

function percent(share: number | null): number | "" {
  return share === null ? "" : share * 100;
}
