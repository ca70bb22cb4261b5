import type { Tester } from "../pattern";
import { parseLength, type LengthUnit } from "../units";
import { cellAt, isNoAnswer, transpose, type Cells } from "./cells";
import { leftOutAs } from "./guess-column";
import { guessReportChoices } from "./guess-report-choices";
import { unitNamed } from "./label-text";
import { readReportRows } from "./read-report-rows";
import type { CountedSwatch } from "./read-swatches";
import type { ColumnChoice, ReportChoices } from "./report-choices";
import { parseNumberedTable } from "./table-text";
import type { ReportsInput } from "./tables-input";
import { unreadCells, type UnreadCell } from "./unread-cells";

type As =
  | "name"
  | "size"
  | "measurement"
  | "swatch"
  | "yarn"
  | "fit"
  | "comment"
  | "date"
  | "contact"
  | "count"
  | "hours"
  | "unit"
  | "left-out";

interface AnsweredColumn {
  readonly header: string;
  readonly as: As;
  /** A measurement, fabric, yarn, count or body measurement. */
  readonly id?: string;
  readonly unit?: string;
}

interface AnsweredTester {
  readonly name: string | null;
  readonly size: string | null;
  readonly swatches: readonly (CountedSwatch & { readonly toolMm?: number })[];
  readonly readings: readonly { readonly measurement: string; readonly cm: number }[];
  readonly worked: Readonly<Record<string, number>>;
  readonly yarn: readonly { readonly yarn: string; readonly grams: number; readonly label?: string }[];
  readonly fit: NonNullable<Tester["fit"]>;
  readonly hours?: number;
  readonly comment?: string;
}

export interface ReportsAnswer {
  readonly columns: readonly AnsweredColumn[];
  readonly testers: readonly AnsweredTester[];
  readonly unread: readonly UnreadCell[];
}

/**
 * What a table of testers' reports says, without anybody's corrections. Rows without any number are left out.
 *
 * @param input from `parseReportsInput`.
 */
export function answerReports({ text, pattern, unit }: ReportsInput): ReportsAnswer {
  const { cells, rowNumbers } = parseNumberedTable(text);
  const guessed = guessReportChoices(cells, pattern);
  const { turned, headerRow } = guessed;
  const view = turned ? transpose(cells) : cells;
  const choices = unit === undefined ? guessed : inUnit(view, guessed, unit);
  const over = parseLength(choices.swatchOver, "cm");
  const { rows, faults } = readReportRows(view, choices, { pattern, overCm: over.ok ? over.cm : 10 });
  return {
    columns: choices.columns.map((choice, column) => answeredColumn(view, { choice, column, headerRow })),
    testers: rows
      .filter(({ hasNumbers, report, comment }) => hasNumbers || (report.size !== "" && comment !== ""))
      .map(({ name, report, counted, toldCounts, comment }) => ({
        name,
        size: report.size === "" ? null : report.size,
        swatches: counted.map((swatch) => {
          const toolMm = report.swatches.find(({ fabric }) => fabric === swatch.fabric)?.toolMm;
          return { ...swatch, ...(toolMm === undefined ? {} : { toolMm }) };
        }),
        readings: report.readings.map(({ measurement, cm }) => ({ measurement, cm })),
        worked: toldCounts,
        yarn: report.yarn.map(({ yarn, grams, label }) => ({ yarn, grams, ...(label === undefined ? {} : { label }) })),
        fit: report.fit ?? [],
        ...(report.hours === undefined ? {} : { hours: report.hours }),
        ...(comment === "" ? {} : { comment }),
      })),
    unread: unreadCells(faults, { view, turned, rowNumbers }),
  };
}

/** The unit that was asked for, where a column does not name its own. */
function inUnit(view: Cells, choices: ReportChoices, unit: LengthUnit): ReportChoices {
  const columns = choices.columns.map((choice, column) =>
    "unit" in choice && unitNamed(cellAt(view, choices.headerRow, column)) === null ? { ...choice, unit } : choice,
  );
  return { ...choices, columns };
}

function answeredColumn(
  view: Cells,
  { choice, column, headerRow }: { readonly choice: ColumnChoice; readonly column: number; readonly headerRow: number },
): AnsweredColumn {
  const header = cellAt(view, headerRow, column);
  const id = "id" in choice ? choice.id : "fabric" in choice ? choice.fabric : undefined;
  const unit = "unit" in choice ? choice.unit : choice.kind === "yarn" ? choice.amountIn : undefined;
  const answers = view
    .flatMap((_, row) => (row > headerRow ? [cellAt(view, row, column)] : []))
    .filter((answer) => !isNoAnswer(answer))
    .map((answer) => ({ text: answer, unit: null, published: null }));
  return {
    header,
    as: choice.kind === "leave out" ? leftOutAs({ heading: header, answers }) : asOf(choice.kind),
    ...(id === undefined ? {} : { id }),
    ...(unit === undefined ? {} : { unit }),
  };
}

function asOf(kind: Exclude<ColumnChoice["kind"], "leave out">): As {
  switch (kind) {
    case "swatch":
    case "swatch stitches":
    case "swatch rows":
    case "swatch across":
    case "swatch along":
    case "swatch over":
    case "tool":
    case "washed":
      return "swatch";
    case "yarn":
    case "yarn name":
      return "yarn";
    case "name":
    case "size":
    case "measurement":
    case "fit":
    case "comment":
    case "count":
    case "hours":
    case "unit":
      return kind;
  }
}
