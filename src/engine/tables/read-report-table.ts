import { missingGrading, testerFaults, testerRangeFaults, type PatternDocument } from "../pattern";
import { parseLength } from "../units";
import { cellAt, isNoAnswer, MAX_ROWS, shapeFaults, transpose, type Cells, type TableFault } from "./cells";
import { choiceKey } from "./guess-report-choices";
import { readReportRows, type ReportRows } from "./read-report-rows";
import type { TesterRow } from "./read-tester-row";
import { reportRemarks } from "./report-remarks";
import type { ReportChoices } from "./report-choices";
import type { ReadTester, ReportSum, ReportTable } from "./report-table";

/**
 * Reads a form's table of reports, one tester a row.
 *
 * @param cells the table as pasted.
 * @param choices what its columns are; `guessReportChoices` makes the first.
 * @param pattern a parsed pattern whose counts all have values.
 * @param taken ids of testers that the call has already.
 * @returns testers with neutral ids that are not taken, or every fault with its row and column. Never throws.
 */
export function readReportTable(
  cells: Cells,
  choices: ReportChoices,
  { pattern, taken = new Set() }: { readonly pattern: PatternDocument; readonly taken?: ReadonlySet<string> },
): ReportTable {
  const shape = shapeFaults(cells, MAX_ROWS);
  if (shape.length > 0) return { ok: false, faults: shape, sum: null };
  const view = choices.turned ? transpose(cells) : cells;
  const faults = choiceFaults(choices, pattern);
  const over = parseLength(choices.swatchOver, "cm");
  if (!over.ok || over.cm <= 0 || over.cm > 1_000) {
    faults.push({
      row: null,
      column: null,
      field: "swatchOver",
      message: over.ok ? `“${choices.swatchOver}” cannot be right here.` : over.message,
    });
  }
  if (faults.length > 0 || !over.ok) return { ok: false, faults, sum: null };
  const read = readReportRows(view, choices, { pattern, overCm: over.cm });
  const withNumbers = read.rows.filter(({ hasNumbers }) => hasNumbers);
  const kept = withNumbers.filter(({ report }) => report.size !== "");
  if (read.rows.length > 0 && withNumbers.length === 0)
    faults.push(whole("No row holds a number that is read. Say above the columns what they are."));
  else if (read.rows.length > 0 && kept.length === 0 && choices.leaveUnread)
    faults.push(whole("No row says a size of this pattern."));
  if (read.rows.length === 0) faults.push(whole("There is no row below the questions. Copy the testers' rows too."));
  if (!choices.leaveUnread) faults.push(...read.faults);
  const sum = sumOf(view, choices, { pattern, read, kept });
  if (faults.length > 0) return { ok: false, faults, sum };
  const testers = withIds(kept, taken);
  const wrong = testers.flatMap(({ row, tester }) =>
    [...testerFaults(tester, pattern), ...testerRangeFaults(tester)].map(({ path, says }) => ({
      row,
      column: null,
      message: `${path}: ${says}`,
    })),
  );
  if (wrong.length > 0) return { ok: false, faults: wrong, sum };
  const remarks = reportRemarks(read, { choices, pattern });
  return { ok: true, testers, sum, leftOut: read.faults, questions: read.questions, remarks };
}

function sumOf(
  view: Cells,
  { columns }: ReportChoices,
  {
    pattern,
    read,
    kept,
  }: { readonly pattern: PatternDocument; readonly read: ReportRows; readonly kept: readonly TesterRow[] },
): ReportSum {
  const measured = columns.flatMap((choice, column) =>
    choice.kind === "measurement" ? [{ id: choice.id, column }] : [],
  );
  return {
    measurements: new Set(measured.map(({ id }) => id)).size,
    ofMeasurements: pattern.measurements.length,
    testers: kept.length,
    ofTesters: read.rows.length,
    readings: kept.reduce((sum, { report }) => sum + report.readings.length, 0),
    ofReadings: read.rows.reduce(
      (sum, { row }) => sum + measured.filter(({ column }) => !isNoAnswer(cellAt(view, row, column))).length,
      0,
    ),
  };
}

function whole(message: string): TableFault {
  return { row: null, column: null, message };
}

/** Choices that are made twice, do not exist in the pattern, or are required and missing. */
function choiceFaults(choices: ReportChoices, pattern: PatternDocument): TableFault[] {
  const faults: TableFault[] = [];
  const seen = new Map<string, number>();
  const known = new Set(
    [pattern.measurements, pattern.counts, pattern.fabrics, pattern.yarns, pattern.bodyMeasurements ?? []].flatMap(
      (items) => items.map(({ id }) => id),
    ),
  );
  choices.columns.forEach((choice, column) => {
    const named = "id" in choice ? choice.id : "fabric" in choice ? choice.fabric : null;
    if (named !== null && !known.has(named))
      faults.push({ row: null, column, message: "Its choice is not in this pattern any more. Choose again." });
    if (choice.kind === "leave out" || choice.kind === "measurement" || choice.kind === "comment") return;
    const key = choiceKey(choice);
    const before = seen.get(key);
    if (before !== undefined)
      faults.push({ row: null, column, message: `Column ${before + 1} says the same already. Leave one of them out.` });
    seen.set(key, column);
  });
  if (missingGrading(pattern).length > 0) {
    faults.push(
      whole("Some counts of this pattern have no numbers yet. Fill them in first; reports are read against them."),
    );
  }
  if (!choices.columns.some(({ kind }) => kind === "size")) {
    faults.push(whole("No column holds the size. Choose “Size” above the column that does."));
  }
  return faults;
}

/** Ids are neutral, because documents are shared more widely than names. */
function withIds(rows: readonly TesterRow[], taken: ReadonlySet<string>): ReadTester[] {
  let number = 0;
  return rows.map(({ row, name, comment, report, typed }) => {
    do number += 1;
    while (taken.has(`tester-${number}`));
    return { row, name, comment, typed, tester: { id: `tester-${number}`, ...report } };
  });
}
