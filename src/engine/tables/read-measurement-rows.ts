import type { LengthUnit } from "../units";
import { cellAt, type Cells, type TableFault } from "./cells";
import type { MeasurementChoices, RowChoice } from "./measurement-choices";
import type { ReadBody, ReadCount, ReadGauge, ReadMeasurement } from "./measurement-table";
import { readBodyLength, readCount, readLength, readTableLength, type ReadNumber } from "./read-cell";
import { labelOfRow, letterOfRow } from "./row-label";
import { bestMultiple } from "./best-multiple";

export interface ReadRows {
  readonly sizes: readonly string[];
  readonly measurements: readonly ReadMeasurement[];
  readonly counts: readonly ReadCount[];
  readonly bodies: readonly ReadBody[];
}

interface Reading {
  readonly view: Cells;
  readonly choices: MeasurementChoices;
  readonly faults: TableFault[];
}

/** Reads the rows and sizes that were chosen; what cannot be read is added to `faults`, at its cell. */
export function readMeasurementRows(reading: Reading, gauge: ReadGauge | null): ReadRows {
  const { choices, view } = reading;
  const rowsOf = (...kinds: readonly RowChoice["kind"][]) =>
    view.flatMap((_, row) => {
      const choice = choices.rows[row];
      return choice && row > choices.headerRow && kinds.includes(choice.kind) ? [{ row, choice }] : [];
    });
  const counts = rowsOf("stitches", "rows").map(({ row, choice }) => readCountRow(reading, row, choice));
  const letters = new Letters(
    reading,
    rowsOf("measurement").map(({ row }) => row),
  );
  return {
    sizes: readSizes(reading),
    counts,
    bodies: rowsOf("body").map(({ row, choice }) => readBodyRow(reading, row, choice)),
    measurements: rowsOf("measurement").map(({ row, choice }) =>
      readMeasurementRow(reading, { row, choice, counts, letters, gauge }),
    ),
  };
}

function readSizes({ view, choices, faults }: Reading): string[] {
  if (choices.sizeColumns.length === 0) {
    faults.push({
      row: null,
      column: null,
      message: "No column holds a size. Say above the columns which of them are sizes.",
    });
  }
  const seen = new Set<string>();
  return choices.sizeColumns.map((column) => {
    const label = cellAt(view, choices.headerRow, column);
    const message =
      label === "" ? "This size has no name." : seen.has(label) ? `The size ${label} stands twice.` : null;
    if (message !== null) faults.push({ row: choices.headerRow, column, message });
    seen.add(label);
    return label;
  });
}

function readMeasurementRow(
  reading: Reading,
  {
    row,
    choice,
    counts,
    letters,
    gauge,
  }: {
    readonly row: number;
    readonly choice: RowChoice;
    readonly counts: readonly ReadCount[];
    readonly letters: Letters;
    readonly gauge: ReadGauge | null;
  },
): ReadMeasurement {
  const { choices } = reading;
  const unit = unitOf(choice, choices);
  const cm = readRow(reading, row, (text) => readTableLength(text, unit));
  const count = counts.find((one) => one.row === choice.countRow && one.direction === choice.workedIn);
  const letter = letters.of(row);
  return {
    row,
    letter,
    label: labelOfRow(reading.view, choices, row) || `Measurement ${letter}`,
    girth: choice.girth,
    toleranceCm: readTolerance(reading, { row, choice, unit }),
    cm,
    workedIn: choice.workedIn,
    countRow: count?.row ?? null,
    times: readTimes(reading, { row, choice, cm, count, gauge }),
  };
}

function readTolerance(
  { choices, faults }: Reading,
  { row, choice, unit }: { row: number; choice: RowChoice; unit: LengthUnit },
): number {
  const ofTable = choice.girth ? choices.girthTolerance : choices.otherTolerance;
  const own = choice.tolerance.trim();
  const read = own === "" ? readLength(ofTable, choices.unit) : readLength(own, unit);
  if (read.ok) return read.value;
  if (own !== "") faults.push({ row, column: null, message: `Its tolerance: ${read.message}` });
  return Number.NaN;
}

function readTimes(
  { faults }: Reading,
  {
    row,
    choice,
    cm,
    count,
    gauge,
  }: {
    readonly row: number;
    readonly choice: RowChoice;
    readonly cm: readonly number[];
    readonly count: ReadCount | undefined;
    readonly gauge: ReadGauge | null;
  },
): number {
  const typed = choice.times.trim();
  if (choice.workedIn === "ruler") return 1;
  if (typed === "") return count && gauge ? bestMultiple(cm, count, gauge) : 1;
  const read = readCount(typed);
  if (read.ok && read.value >= 1) return read.value;
  faults.push({ row, column: null, message: `“${typed}” times is not possible. Write a whole number, 1 or more.` });
  return 1;
}

function readCountRow(reading: Reading, row: number, choice: RowChoice): ReadCount {
  const direction = choice.kind === "rows" ? "rows" : "stitches";
  const label = labelOfRow(reading.view, reading.choices, row) || `${direction} of row ${row + 1}`;
  return { row, label, direction, values: readRow(reading, row, readCount) };
}

function readBodyRow(reading: Reading, row: number, choice: RowChoice): ReadBody {
  const unit = unitOf(choice, reading.choices);
  const label = labelOfRow(reading.view, reading.choices, row) || "to fit";
  return { row, label, cm: readRow(reading, row, (text) => readBodyLength(text, unit)) };
}

function readRow({ view, choices, faults }: Reading, row: number, read: (text: string) => ReadNumber): number[] {
  return choices.sizeColumns.map((column) => {
    const text = cellAt(view, row, column);
    const result = text === "" ? { ok: false as const, message: EMPTY } : read(text);
    if (result.ok) return result.value;
    faults.push({ row, column, message: result.message });
    return Number.NaN;
  });
}

const EMPTY = "This cell is empty. Every size needs a number here; fill it, or leave out the row.";

function unitOf(choice: RowChoice, choices: MeasurementChoices): LengthUnit {
  return choice.unit === "table" ? choices.unit : choice.unit;
}

/** Letters of the measurements: their own, and for those without one the next that is free. */
class Letters {
  private readonly byRow = new Map<number, string>();

  constructor({ view, choices, faults }: Reading, rows: readonly number[]) {
    const taken = new Set<string>();
    for (const row of rows) {
      const letter = letterOfRow(view, choices, row);
      if (letter === "") continue;
      if (taken.has(letter))
        faults.push({ row, column: choices.letterColumn, message: `The letter ${letter} stands twice.` });
      taken.add(letter);
      this.byRow.set(row, letter);
    }
    for (const row of rows) {
      if (this.byRow.has(row)) continue;
      const letter = freeLetter(taken);
      taken.add(letter);
      this.byRow.set(row, letter);
    }
  }

  of(row: number): string {
    return this.byRow.get(row) ?? "";
  }
}

function freeLetter(taken: ReadonlySet<string>): string {
  for (let number = 0; ; number += 1) {
    const letter = String.fromCharCode(65 + (number % 26)) + (number < 26 ? "" : String(Math.floor(number / 26)));
    if (!taken.has(letter)) return letter;
  }
}
