import { cellAt, type Cells } from "./cells";
import { splitLetter, withoutUnit } from "./label-text";

interface LabelColumns {
  readonly letterColumn: number | null;
  readonly labelColumn: number | null;
}

/** @returns a row's words, without the letter in front and the unit behind; "" where it has none. */
export function labelOfRow(view: Cells, { labelColumn, letterColumn }: LabelColumns, row: number): string {
  const text = labelColumn === null ? "" : cellAt(view, row, labelColumn);
  return withoutUnit(letterColumn === null ? splitLetter(text).label : text);
}

/** @returns a row's letter, from its own column or from in front of its words; "" where it has none. */
export function letterOfRow(view: Cells, { labelColumn, letterColumn }: LabelColumns, row: number): string {
  if (letterColumn !== null)
    return cellAt(view, row, letterColumn)
      .replace(/[().:]/g, "")
      .toUpperCase();
  return labelColumn === null ? "" : splitLetter(cellAt(view, row, labelColumn)).letter;
}
