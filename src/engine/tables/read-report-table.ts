import { missingGrading, testerFaults, testerRangeFaults, type PatternDocument } from "../pattern";
import { parseLength } from "../units";
import { cellAt, columnCount, isNoAnswer, shapeFaults, type Cells, type TableFault } from "./cells";
import { designBySize } from "./design-by-size";
import { readTesterRow, type TesterRow } from "./read-tester-row";
import { reportRemarks } from "./report-remarks";
import type { ReportChoices } from "./report-choices";
import type { ReadTester, ReportTable } from "./report-table";

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
  const shape = shapeFaults(cells);
  if (shape.length > 0) return { ok: false, faults: shape };
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
  if (faults.length > 0 || !over.ok) return { ok: false, faults };
  const questions: TableFault[] = [];
  const design = designBySize(pattern);
  const rows = filledRows(cells, choices).map((row) =>
    readTesterRow({ cells, row, choices, pattern, design, overCm: over.cm, faults, questions }),
  );
  const withNumbers = rows.filter(({ hasNumbers }) => hasNumbers);
  if (rows.length > 0 && withNumbers.length === 0)
    faults.push(whole("No row holds a number that is read. Say above the columns what they are."));
  if (rows.length === 0) faults.push(whole("There is no row below the questions. Copy the testers' rows too."));
  if (faults.length > 0) return { ok: false, faults };
  const testers = withIds(withNumbers, taken);
  const wrong = testers.flatMap(({ row, tester }) =>
    [...testerFaults(tester, pattern), ...testerRangeFaults(tester)].map(({ path, says }) => ({
      row,
      column: null,
      message: `${path}: ${says}`,
    })),
  );
  if (wrong.length > 0) return { ok: false, faults: wrong };
  return { ok: true, testers, questions, remarks: reportRemarks(rows, { choices, pattern }) };
}

function whole(message: string): TableFault {
  return { row: null, column: null, message };
}

/** Choices that are made twice, do not exist in the pattern, or are required and missing. */
function choiceFaults(choices: ReportChoices, pattern: PatternDocument): TableFault[] {
  const faults: TableFault[] = [];
  const seen = new Map<string, number>();
  const known = new Set(
    [...pattern.measurements, ...pattern.counts, ...pattern.fabrics, ...pattern.yarns].map(({ id }) => id),
  );
  choices.columns.forEach((choice, column) => {
    const named = "id" in choice ? choice.id : "fabric" in choice ? choice.fabric : null;
    if (named !== null && !known.has(named))
      faults.push({ row: null, column, message: "Its choice is not in this pattern any more. Choose again." });
    if (choice.kind === "leave out" || choice.kind === "measurement") return;
    const key = `${choice.kind} ${named ?? ""}`;
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

function filledRows(cells: Cells, { headerRow, columns }: ReportChoices): number[] {
  const width = Math.min(columnCount(cells), columns.length);
  return cells.flatMap((_, row) => {
    if (row <= headerRow) return [];
    const hasAnswer = Array.from({ length: width }, (_none, column) => column).some(
      (column) => columns[column]?.kind !== "leave out" && !isNoAnswer(cellAt(cells, row, column)),
    );
    return hasAnswer ? [row] : [];
  });
}

/** Ids are neutral, because documents are shared more widely than names. */
function withIds(rows: readonly TesterRow[], taken: ReadonlySet<string>): ReadTester[] {
  let number = 0;
  return rows.map(({ row, name, report, typed }) => {
    do number += 1;
    while (taken.has(`tester-${number}`));
    return { row, name, typed, tester: { id: `tester-${number}`, ...report } };
  });
}
