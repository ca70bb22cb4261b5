import { cellAt, columnCount, isNoAnswer, type Cells } from "./cells";
import type { MeasurementChoices } from "./measurement-choices";
import { looksNumeric } from "./read-cell";
import type { ReportChoices } from "./report-choices";

/** Rows below the sizes that hold numbers and are not read. @param view turned where the sizes run down. */
export function leftOutRows(view: Cells, { headerRow, rows, sizeColumns }: MeasurementChoices): number[] {
  return rows.flatMap(({ kind }, row) => {
    const isLeft = row > headerRow && kind === "leave out";
    return isLeft && sizeColumns.some((column) => looksNumeric(cellAt(view, row, column))) ? [row] : [];
  });
}

/** A column of reports that is not read, and how many answers it has. */
export interface LeftOutColumn {
  readonly column: number;
  readonly answers: number;
}

/** Columns with answers that are not read. @param view turned where testers run across. */
export function leftOutColumns(view: Cells, { headerRow, columns }: ReportChoices): LeftOutColumn[] {
  return Array.from({ length: columnCount(view) }, (_, column) => column).flatMap((column) => {
    if ((columns[column]?.kind ?? "leave out") !== "leave out") return [];
    const answers = view.filter((_, row) => row > headerRow && !isNoAnswer(cellAt(view, row, column))).length;
    return answers === 0 ? [] : [{ column, answers }];
  });
}
