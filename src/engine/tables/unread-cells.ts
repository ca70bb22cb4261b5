import { cellAt, type Cells, type TableFault } from "./cells";

/** A cell that says something that cannot be read; its row and column are those of the text, from 1. */
export interface UnreadCell {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

interface Table {
  /** Turned where its sizes or testers run the other way. */
  readonly view: Cells;
  readonly turned: boolean;
  readonly rowNumbers: readonly number[];
}

/** The cells of faults, each once; empty ones say nothing. */
export function unreadCells(faults: readonly TableFault[], { view, turned, rowNumbers }: Table): UnreadCell[] {
  const seen = new Set<string>();
  return faults.flatMap(({ row, column }) => {
    if (row === null || column === null || column < 0 || seen.has(`${row} ${column}`)) return [];
    seen.add(`${row} ${column}`);
    const text = cellAt(view, row, column);
    if (text === "") return [];
    const [textRow, textColumn] = turned ? [column, row] : [row, column];
    return [{ row: rowNumbers[textRow] ?? 0, column: textColumn + 1, text }];
  });
}
