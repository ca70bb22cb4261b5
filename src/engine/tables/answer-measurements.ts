import type { LengthUnit } from "../units";
import { guessMeasurementChoices } from "./guess-measurement-choices";
import { readMeasurementRows } from "./read-measurement-rows";
import { parseNumberedTable } from "./table-text";
import type { MeasurementsInput } from "./tables-input";
import { unreadCells, type UnreadCell } from "./unread-cells";
import { transpose } from "./cells";
import { letterOfRow } from "./row-label";

interface LengthRow {
  readonly label: string;
  readonly letter: string | null;
  /** One a size; null where the cell is empty or cannot be read. */
  readonly cm: readonly (number | null)[];
}

interface CountRow {
  readonly label: string;
  readonly direction: "stitches" | "rows";
  readonly values: readonly (number | null)[];
}

export interface MeasurementsAnswer {
  readonly unit: LengthUnit;
  readonly sizes: readonly string[];
  /** Finished measurements, and of each the label of the count that it is worked in. */
  readonly rows: readonly (LengthRow & { readonly count: string | null })[];
  readonly bodies: readonly LengthRow[];
  readonly counts: readonly CountRow[];
  readonly gauge: { readonly stitches: string; readonly rows: string; readonly over: string } | null;
  readonly unread: readonly UnreadCell[];
}

/**
 * What a table of measurements says, without anybody's corrections.
 *
 * @param input from `parseMeasurementsInput`.
 */
export function answerMeasurements({ text, unit }: MeasurementsInput): MeasurementsAnswer {
  const { cells, rowNumbers } = parseNumberedTable(text);
  const choices = guessMeasurementChoices(cells, unit === undefined ? {} : { unit });
  const view = choices.turned ? transpose(cells) : cells;
  const faults: Parameters<typeof readMeasurementRows>[0]["faults"] = [];
  const { sizes, measurements, bodies, counts } = readMeasurementRows({ view, choices, faults }, null);
  const lengths = (label: string, row: number, cm: readonly number[]): LengthRow => ({
    label,
    letter: letterOfRow(view, choices, row) || null,
    cm: cm.map(numberOrNull),
  });
  const { gaugeStitches, gaugeRows, gaugeOver } = choices;
  return {
    unit: choices.unit,
    sizes,
    rows: measurements.map(({ label, row, cm, countRow }) => ({
      ...lengths(label, row, cm),
      count: counts.find((count) => count.row === countRow)?.label ?? null,
    })),
    bodies: bodies.map(({ label, row, cm }) => lengths(label, row, cm)),
    counts: counts.map(({ label, direction, values }) => ({ label, direction, values: values.map(numberOrNull) })),
    gauge: gaugeStitches === "" ? null : { stitches: gaugeStitches, rows: gaugeRows, over: gaugeOver },
    unread: unreadCells(faults, { view, turned: choices.turned, rowNumbers }),
  };
}

function numberOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
