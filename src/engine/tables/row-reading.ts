import type { PatternDocument } from "../pattern";
import { CM_PER_INCH, type LengthUnit } from "../units";
import { cellAt, isNoAnswer, type Cells, type TableFault } from "./cells";
import { plainLength } from "./plain-number";
import { readLength, type ReadNumber } from "./read-cell";
import type { ColumnChoice, ReportChoices } from "./report-choices";

/** A row that is being read; faults and questions are added to its lists. */
export interface RowReading {
  readonly cells: Cells;
  readonly row: number;
  readonly choices: ReportChoices;
  readonly pattern: PatternDocument;
  /** The pattern's measurements, cm by size and measurement. */
  readonly design: ReadonlyMap<string, ReadonlyMap<string, number>>;
  /** In which its tester measured, where a column says so. */
  readonly unit: LengthUnit | null;
  readonly overCm: number;
  readonly faults: TableFault[];
  readonly questions: TableFault[];
}

export interface AnsweredCell<Choice extends ColumnChoice = ColumnChoice> {
  readonly choice: Choice;
  readonly column: number;
  readonly text: string;
}

/** The row's cells of one kind that say something. */
export function answered<Kind extends ColumnChoice["kind"]>(
  { cells, row, choices }: RowReading,
  kind: Kind,
): AnsweredCell<Extract<ColumnChoice, { kind: Kind }>>[] {
  return choices.columns.flatMap((choice, column) => {
    if (!isKind(choice, kind)) return [];
    const text = cellAt(cells, row, column);
    return isNoAnswer(text) ? [] : [{ choice, column, text }];
  });
}

function isKind<Kind extends ColumnChoice["kind"]>(
  choice: ColumnChoice,
  kind: Kind,
): choice is Extract<ColumnChoice, { kind: Kind }> {
  return choice.kind === kind;
}

/** The row's numbers of one kind; a text that is none is a fault at its cell. */
export function readNumbers<Kind extends ColumnChoice["kind"]>(
  reading: RowReading,
  kind: Kind,
  read: (text: string, choice: Extract<ColumnChoice, { kind: Kind }>) => ReadNumber,
): (AnsweredCell<Extract<ColumnChoice, { kind: Kind }>> & { readonly value: number })[] {
  return answered(reading, kind).flatMap((cell) => {
    const result = read(cell.text, cell.choice);
    if (result.ok) return [{ ...cell, value: result.value }];
    reading.faults.push({ row: reading.row, column: cell.column, message: result.message });
    return [];
  });
}

/** The typed text without what was written around it, with the column's unit if it has none. */
export function withUnit(typed: string, unit: LengthUnit): string {
  const text = plainLength(typed);
  const bare = readLength(text, "cm");
  const inches = readLength(text, "in");
  const unsaid = bare.ok && inches.ok && Math.abs(inches.value / bare.value - CM_PER_INCH) < 1e-9;
  return unsaid ? `${text} ${unit}` : text;
}
