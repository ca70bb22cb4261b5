import type { PatternDocument } from "../pattern";
import { cellAt, columnCount, isNoAnswer, isSummary, type Cells, type TableFault } from "./cells";
import { designBySize } from "./design-by-size";
import { readTesterRow, type TesterRow } from "./read-tester-row";
import { namedUnit } from "./read-unit";
import type { ReportChoices } from "./report-choices";

export interface ReportRows {
  readonly rows: readonly TesterRow[];
  /** Rows that are no tester: averages, and the questions again. */
  readonly passedOver: readonly number[];
  /** At their cells. */
  readonly faults: readonly TableFault[];
  readonly questions: readonly TableFault[];
}

/** Reads each tester's row of a table, turned where testers run across. @param overCm of swatches where no cell says. */
export function readReportRows(
  view: Cells,
  choices: ReportChoices,
  { pattern, overCm }: { readonly pattern: PatternDocument; readonly overCm: number },
): ReportRows {
  const faults: TableFault[] = [];
  const questions: TableFault[] = [];
  const design = designBySize(pattern);
  const { testers, passedOver } = filledRows(view, choices);
  const unitAt = choices.columns.findIndex(({ kind }) => kind === "unit");
  const rows = testers.map((row) => {
    const unit = unitAt < 0 ? null : namedUnit(cellAt(view, row, unitAt));
    return readTesterRow({ cells: view, row, choices, pattern, design, unit, overCm, faults, questions });
  });
  return { rows, passedOver, faults, questions };
}

function filledRows(
  view: Cells,
  choices: ReportChoices,
): { readonly testers: number[]; readonly passedOver: number[] } {
  const { headerRow, columns } = choices;
  const width = Math.min(columnCount(view), columns.length);
  const read = columns.flatMap(({ kind }, column) => (kind !== "leave out" && column < width ? [column] : []));
  const sizeAt = columns.findIndex(({ kind }) => kind === "size");
  const testers: number[] = [];
  const passedOver: number[] = [];
  view.forEach((cells, row) => {
    if (row <= headerRow || !read.some((column) => !isNoAnswer(cellAt(view, row, column)))) return;
    const size = sizeAt < 0 ? "" : cellAt(view, row, sizeAt);
    const isHeadingAgain = size !== "" && size === cellAt(view, headerRow, sizeAt);
    const first = cells.find((text) => text.trim() !== "")?.trim() ?? "";
    if (isHeadingAgain || (isNoAnswer(size) && isSummary(first))) passedOver.push(row);
    else testers.push(row);
  });
  return { testers, passedOver };
}
