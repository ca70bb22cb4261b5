export { uniqueSlug } from "./slug";
export {
  cellAt,
  columnCount,
  MAX_MEASUREMENT_ROWS,
  MAX_ROWS,
  tooLarge,
  transpose,
  type Cells,
  type TableFault,
} from "./cells";
export { leftOutColumns, leftOutRows } from "./left-out";
export { guessHeaderRow, layoutAt, type Layout } from "./guess-layout";
export { labelOfRow, letterOfRow } from "./row-label";
export { choicesOfLayout, guessMeasurementChoices, defaultTolerances } from "./guess-measurement-choices";
export {
  measurementChoicesSchema,
  rowChoiceSchema,
  type MeasurementChoices,
  type RowChoice,
  type RowKind,
} from "./measurement-choices";
export type { MeasurementTable, Breakdown } from "./measurement-table";
export { readLength } from "./read-cell";
export { readMeasurementTable } from "./read-measurement-table";
export { guessReportChoices } from "./guess-report-choices";
export { readReportTable } from "./read-report-table";
export { MAX_COMMENT_LENGTH } from "./report-remarks";
export { reportChoicesSchema, type ColumnChoice, type ReportChoices } from "./report-choices";
export type { ReadTester, ReportTable } from "./report-table";
export { readSizeList } from "./read-size-list";
export { sizesOfList } from "./sizes-of-list";
export { parseTableText, withCells, type ChangedCell } from "./table-text";
export { parseMeasurementsInput, parseReportsInput } from "./tables-input";
export { answerMeasurements } from "./answer-measurements";
export { answerReports } from "./answer-reports";
