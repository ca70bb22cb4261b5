import type { KeyboardEvent } from "react";

/** A cell of a grid, by index. */
export interface GridCell {
  readonly row: number;
  readonly column: number;
}

export function cellOf(target: EventTarget | null): GridCell | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>("[data-row][data-column]") : null;
  return cell === null ? null : { row: Number(cell.dataset["row"]), column: Number(cell.dataset["column"]) };
}

export function inputAt(area: Element, { row, column }: GridCell): HTMLInputElement | null {
  return area.querySelector<HTMLInputElement>(`[data-row="${row}"][data-column="${column}"] input`);
}

/** A rectangle of cells, its edges included. */
interface GridRange {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export function rangeOf({ from, to }: { readonly from: GridCell; readonly to: GridCell }): GridRange {
  return {
    top: Math.min(from.row, to.row),
    left: Math.min(from.column, to.column),
    bottom: Math.max(from.row, to.row),
    right: Math.max(from.column, to.column),
  };
}

/** Marks a range by an attribute, so that no cell is drawn again; null for none. */
export function showRange(area: Element, range: GridRange | null): void {
  for (const cell of area.querySelectorAll<HTMLElement>("[data-row][data-column]")) {
    const at = cellOf(cell);
    const isIn =
      range !== null &&
      at !== null &&
      at.row >= range.top &&
      at.row <= range.bottom &&
      at.column >= range.left &&
      at.column <= range.right;
    cell.toggleAttribute("data-marked", isIn);
  }
}

interface GridStep {
  readonly down: number;
  readonly across: number;
  /** A range grows by it. */
  readonly isMarking: boolean;
}

/** Where a key leads; null where it belongs to the text in the cell. */
export function stepOf({ key, shiftKey, target, altKey, ctrlKey, metaKey }: KeyboardEvent): GridStep | null {
  if (!(target instanceof HTMLInputElement) || target.type === "checkbox" || altKey || ctrlKey || metaKey) return null;
  if (key === "Enter") return { down: shiftKey ? -1 : 1, across: 0, isMarking: false };
  if (key === "ArrowUp") return { down: -1, across: 0, isMarking: shiftKey };
  if (key === "ArrowDown") return { down: 1, across: 0, isMarking: shiftKey };
  if (key === "ArrowLeft" && isAtEdge(target, "start")) return { down: 0, across: -1, isMarking: shiftKey };
  if (key === "ArrowRight" && isAtEdge(target, "end")) return { down: 0, across: 1, isMarking: shiftKey };
  return null;
}

/** The whole text is selected, or the caret stands at its start or end. */
function isAtEdge({ value, selectionStart, selectionEnd }: HTMLInputElement, edge: "start" | "end"): boolean {
  if (selectionStart === 0 && selectionEnd === value.length) return true;
  return selectionStart === selectionEnd && selectionStart === (edge === "start" ? 0 : value.length);
}
