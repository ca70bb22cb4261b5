import { cellAt, labelOfRow, letterOfRow, type Cells, type MeasurementChoices, type TableFault } from "@/engine/tables";
import type { Said } from "@/ui/message-list";

/** A row's name: its letter and label. */
export function nameOfRow(view: Cells, choices: MeasurementChoices, row: number): string {
  return `${letterOfRow(view, choices, row)} ${labelOfRow(view, choices, row)}`.trim();
}

/** A fault with its position in words: "Row 5 (B Upper arm), column M". */
export function placed(view: Cells, choices: MeasurementChoices, { row, column, message }: TableFault): Said {
  const inRow = row === null ? "" : `Row ${row + 1}`;
  const name = row === null || row <= choices.headerRow ? "" : nameOfRow(view, choices, row);
  const heading = column === null ? "" : cellAt(view, choices.headerRow, column) || String(column + 1);
  const inColumn = heading === "" ? "" : `column ${heading}`;
  const where = [name === "" ? inRow : `${inRow} (${name})`, inColumn].filter((part) => part !== "").join(", ");
  return { where, says: message };
}

/** Key of a cell among faults and questions. */
export function cellKey(row: number, column: number): string {
  return `${row} ${column}`;
}

/** Messages by cell. */
export function byCell(faults: readonly TableFault[]): ReadonlyMap<string, string> {
  return new Map(
    faults.flatMap(({ row, column, message }) =>
      row === null || column === null ? [] : [[cellKey(row, column), message] as const],
    ),
  );
}
