import { parsePattern } from "../pattern";
import { parseLength, parseNumber } from "../units";
import { MAX_MEASUREMENT_ROWS, shapeFaults, transpose, type Cells, type TableFault } from "./cells";
import { makePattern } from "./make-pattern";
import type { MeasurementChoices } from "./measurement-choices";
import { measurementQuestions } from "./measurement-questions";
import type { MeasurementTable, ReadGauge } from "./measurement-table";
import { readMeasurementRows } from "./read-measurement-rows";

/**
 * Makes a pattern of a pasted table of finished measurements, so that what the pattern comes to in every size is exactly
 * what the table says.
 *
 * @param cells the table as pasted.
 * @param choices what its rows and columns are; `guessMeasurementChoices` makes the first.
 * @returns a pattern that `parsePattern` accepts, or every fault with its row and column (of the turned table where
 *   sizes run down). Never throws.
 */
export function readMeasurementTable(cells: Cells, choices: MeasurementChoices): MeasurementTable {
  const shape = shapeFaults(cells, MAX_MEASUREMENT_ROWS);
  if (shape.length > 0) return { ok: false, faults: shape };
  const faults: TableFault[] = [];
  const view = choices.turned ? transpose(cells) : cells;
  const stated = readFields(choices, faults);
  const rows = readMeasurementRows({ view, choices, faults }, stated.gauge);
  if (rows.measurements.length === 0) {
    faults.push({
      row: null,
      column: null,
      message: "No row is a finished measurement. Say before the rows which of them are.",
    });
  }
  if (faults.length > 0 || stated.gauge === null || stated.toolMm === null) return { ok: false, faults };
  const made = makePattern(rows, {
    name: choices.name.trim(),
    craft: choices.craft,
    gauge: stated.gauge,
    toolMm: stated.toolMm,
  });
  const parsed = parsePattern(made.pattern);
  if (!parsed.ok)
    return {
      ok: false,
      faults: parsed.faults.map(({ path, says }) => ({ row: null, column: null, message: `${path}: ${says}` })),
    };
  const questions = measurementQuestions(rows, { breakdowns: made.breakdowns, columns: choices.sizeColumns });
  return { ok: true, pattern: parsed.document, breakdowns: made.breakdowns, questions, remarks: made.remarks };
}

interface Stated {
  readonly gauge: ReadGauge | null;
  readonly toolMm: number | null;
}

function readFields(choices: MeasurementChoices, faults: TableFault[]): Stated {
  const fault = (field: string, message: string) => faults.push({ row: null, column: null, field, message });
  const number = (field: "gaugeStitches" | "gaugeRows" | "toolMm", missing: string) => {
    const typed = choices[field].replace(/\s*mm$/i, "").trim();
    const read = parseNumber(typed);
    if (read.ok && read.value > 0 && read.value <= 1_000) return read.value;
    fault(field, typed === "" ? missing : read.ok ? `“${typed}” cannot be right here.` : read.message);
    return null;
  };
  if (choices.name.trim() === "") fault("name", "Give the pattern a name; you can change it later.");
  const stitches = number("gaugeStitches", "Write how many stitches the gauge has.");
  const rows = number("gaugeRows", "Write how many rows the gauge has.");
  const toolMm = number("toolMm", `Write the size of the ${choices.craft === "crochet" ? "hook" : "needles"} in mm.`);
  const overCm = lengthField("gaugeOver", choices.gaugeOver, { unit: "cm", fault });
  lengthField("girthTolerance", choices.girthTolerance, { unit: choices.unit, fault });
  lengthField("otherTolerance", choices.otherTolerance, { unit: choices.unit, fault });
  const whole = stitches !== null && rows !== null && overCm !== null;
  return { gauge: whole ? { stitches, rows, overCm } : null, toolMm };
}

function lengthField(
  field: string,
  typed: string,
  { unit, fault }: { readonly unit: "cm" | "in"; readonly fault: (field: string, message: string) => void },
): number | null {
  const read = parseLength(typed, unit);
  if (read.ok && read.cm > 0 && read.cm <= 1_000) return read.cm;
  fault(field, read.ok ? `“${typed}” cannot be right here.` : read.message);
  return null;
}
