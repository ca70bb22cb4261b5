"use client";

import type { ClipboardEvent, KeyboardEvent, ReactNode } from "react";
import { parseLength } from "@/engine/units";
import { parseTableText } from "@/engine/tables";

interface GridAreaProps {
  /**
   * Called with cells copied from a spreadsheet, to write from a cell to the right and down.
   *
   * @param row @param column of the cell that they were pasted into.
   */
  readonly onBlock: (block: readonly (readonly string[])[], row: number, column: number) => void;
  readonly children: ReactNode;
}

/**
 * A table of inputs that accepts cells from a spreadsheet and moves with the up and down arrows and Enter. Its inputs are in elements with `data-row` and `data-column`.
 */
export function GridArea({ onBlock, children }: GridAreaProps) {
  const onPaste = (event: ClipboardEvent<HTMLDivElement>) => {
    const block = pastedBlock(event.clipboardData.getData("text/plain"));
    const cell = cellOf(event.target);
    if (cell === null || (block.length < 2 && (block[0]?.length ?? 0) < 2)) return;
    event.preventDefault();
    onBlock(block, cell.row, cell.column);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const down = stepOf(event);
    const cell = cellOf(event.target);
    if (down === 0 || cell === null) return;
    const next = event.currentTarget.querySelector<HTMLInputElement>(
      `[data-row="${cell.row + down}"][data-column="${cell.column}"] input`,
    );
    event.preventDefault();
    next?.focus();
    next?.select();
  };
  return (
    <div onPaste={onPaste} onKeyDown={onKeyDown}>
      {children}
    </div>
  );
}

function stepOf({ key, shiftKey, target, altKey, ctrlKey, metaKey }: KeyboardEvent): number {
  if (!(target instanceof HTMLInputElement) || target.type === "checkbox" || altKey || ctrlKey || metaKey) return 0;
  if (key === "ArrowUp" || (key === "Enter" && shiftKey)) return -1;
  return key === "ArrowDown" || key === "Enter" ? 1 : 0;
}

function cellOf(target: EventTarget): { readonly row: number; readonly column: number } | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>("[data-row][data-column]") : null;
  return cell === null ? null : { row: Number(cell.dataset.row), column: Number(cell.dataset.column) };
}

/**
 * The pasted cells. Without tabs, where every line is a number such as `38,5`, a comma is a decimal comma and each line one cell; an empty line is an empty cell.
 */
export function pastedBlock(text: string): string[][] {
  const lines = text.replace(/\r?\n$/, "").split(/\r?\n/);
  const isColumn = lines.every((line) => line.trim() === "" || parseLength(line, "cm").ok);
  return isColumn ? lines.map((line) => [line.trim()]) : parseTableText(text);
}
