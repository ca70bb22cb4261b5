"use client";

import { useRef, type ClipboardEvent, type KeyboardEvent, type PointerEvent, type ReactNode } from "react";
import { parseTableText } from "@/engine/tables";
import { parseLength } from "@/engine/units";
import { cellOf, inputAt, rangeOf, showRange, stepOf, type GridCell } from "./grid-cells";

interface GridAreaProps {
  /**
   * Called with cells copied from a spreadsheet, to write from a cell to the right and down.
   *
   * @param row @param column of the cell that they were pasted into.
   */
  readonly onBlock: (block: readonly (readonly string[])[], row: number, column: number) => void;
  /** What a cell holds; with it, ranges can be marked, copied and cleared. */
  readonly textAt?: (row: number, column: number) => string;
  readonly children: ReactNode;
}

/**
 * A table of inputs that is worked like a spreadsheet: the arrows and Enter move, Shift or dragging marks a range, which is
 * copied, cleared and pasted into. Its inputs are in elements with `data-row` and `data-column`.
 */
export function GridArea({ onBlock, textAt, children }: GridAreaProps) {
  const area = useRef<HTMLDivElement>(null);
  const marked = useRef<{ readonly from: GridCell; readonly to: GridCell } | null>(null);
  const mark = (from: GridCell | null, to: GridCell | null) => {
    marked.current = from === null || to === null || isOne({ from, to }) ? null : { from, to };
    if (area.current !== null) showRange(area.current, marked.current && rangeOf(marked.current));
  };
  const onPaste = (event: ClipboardEvent<HTMLDivElement>) => {
    const block = pastedBlock(event.clipboardData.getData("text/plain"));
    const range = marked.current && rangeOf(marked.current);
    const cell = range ? { row: range.top, column: range.left } : cellOf(event.target);
    const isBlock = block.length > 1 || (block[0]?.length ?? 0) > 1;
    if (cell === null || (!isBlock && range === null)) return;
    event.preventDefault();
    onBlock(isBlock || range === null ? block : filled(range, block[0]?.[0] ?? ""), cell.row, cell.column);
  };
  const onCopy = (event: ClipboardEvent<HTMLDivElement>) => {
    const range = marked.current && rangeOf(marked.current);
    if (range === null || textAt === undefined) return;
    event.preventDefault();
    const lines = filled(range, "").map((cells, down) =>
      cells.map((_, across) => textAt(range.top + down, range.left + across)).join("\t"),
    );
    event.clipboardData.setData("text/plain", lines.join("\n"));
  };
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const cell = cellOf(event.target);
    if (cell === null) return;
    const range = marked.current && rangeOf(marked.current);
    if (range !== null && (event.key === "Delete" || event.key === "Backspace")) {
      event.preventDefault();
      return onBlock(filled(range, ""), range.top, range.left);
    }
    const step = stepOf(event);
    if (step === null) return;
    event.preventDefault();
    if (step.isMarking && textAt !== undefined) {
      const { from, to } = marked.current ?? { from: cell, to: cell };
      const next = { row: to.row + step.down, column: to.column + step.across };
      if (inputAt(event.currentTarget, next) !== null) mark(from, next);
      return;
    }
    mark(null, null);
    const next = inputAt(event.currentTarget, { row: cell.row + step.down, column: cell.column + step.across });
    next?.focus();
    next?.select();
  };
  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    const [focused, cell] = [cellOf(document.activeElement), cellOf(event.target)];
    if (!event.shiftKey || focused === null || cell === null || textAt === undefined) return mark(null, null);
    event.preventDefault();
    mark(focused, cell);
  };
  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    const [focused, cell] = [cellOf(document.activeElement), cellOf(event.target)];
    if (event.pointerType !== "mouse" || event.buttons !== 1 || focused === null || cell === null) return;
    if (textAt !== undefined && !(isOne({ from: focused, to: cell }) && marked.current === null)) mark(focused, cell);
  };
  return (
    <div
      ref={area}
      onPaste={onPaste}
      onCopy={onCopy}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
    >
      {children}
    </div>
  );
}

function isOne({ from, to }: { readonly from: GridCell; readonly to: GridCell }): boolean {
  return from.row === to.row && from.column === to.column;
}

function filled({ top, left, bottom, right }: ReturnType<typeof rangeOf>, text: string): string[][] {
  return Array.from({ length: bottom - top + 1 }, () => new Array<string>(right - left + 1).fill(text));
}

/**
 * The pasted cells. Without tabs, where every line is a number such as `38,5`, a comma is a decimal comma and each line one cell; an empty line is an empty cell.
 */
export function pastedBlock(text: string): string[][] {
  const lines = text.replace(/\r?\n$/, "").split(/\r?\n/);
  const isColumn = lines.every((line) => line.trim() === "" || parseLength(line, "cm").ok);
  return isColumn ? lines.map((line) => [line.trim()]) : parseTableText(text);
}
