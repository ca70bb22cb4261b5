import { cellAt, type Cells, type ReportChoices, type TableFault } from "@/engine/tables";
import type { Said } from "@/ui/message-list";

/** The name in a tester's row; "" if there is none. */
export function nameOfTester(cells: Cells, choices: ReportChoices, row: number): string {
  const column = choices.columns.findIndex(({ kind }) => kind === "name");
  return column < 0 ? "" : cellAt(cells, row, column);
}

/** A fault with its position in words: "Row 5 (Ann), column “Upper arm”". */
export function placedInReports(cells: Cells, choices: ReportChoices, { row, column, message }: TableFault): Said {
  const name = row === null ? "" : nameOfTester(cells, choices, row);
  const inRow = row === null ? "" : name === "" ? `Row ${row + 1}` : `Row ${row + 1} (${name})`;
  const heading =
    column === null || column < 0 ? "" : shorten(cellAt(cells, choices.headerRow, column)) || String(column + 1);
  return {
    where: [inRow, heading === "" ? "" : `column “${heading}”`].filter((part) => part !== "").join(", "),
    says: message,
  };
}

const LONGEST_HEADING = 40;

function shorten(text: string): string {
  return text.length > LONGEST_HEADING ? `${text.slice(0, LONGEST_HEADING - 1)}…` : text;
}
