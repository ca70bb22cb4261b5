import { useCallback, useState, type RefCallback } from "react";
import { cellOf, type GridCell } from "./grid-cells";

/** Sizes of `grading-grid.css`, in rem. */
const ROW_REM = 2;
const COLUMN_REM = 5.25;
/** Drawn beyond what is in sight, so that scrolling and the arrows find them; the range moves in steps as large. */
const MORE_ROWS = 4;
const MORE_COLUMNS = 2;

export interface ShownCells {
  readonly rows: readonly [from: number, to: number];
  readonly columns: readonly [from: number, to: number];
  /** The cell that has the focus, which stays wherever it is. */
  readonly kept: GridCell | null;
}

/**
 * Which cells of a large grid are in sight of its frame: a browser takes longer than a key may to draw a thousand inputs.
 *
 * @returns with them the reference of the frame.
 */
export function useShownCells(): { readonly shown: ShownCells; readonly frame: RefCallback<HTMLElement> } {
  const [shown, setShown] = useState<ShownCells>({ rows: [0, 24], columns: [0, 14], kept: null });
  const frame = useCallback((element: HTMLElement | null) => {
    if (element === null) return;
    const look = () => setShown((before) => changed(before, shownIn(element)));
    const observer = new ResizeObserver(look);
    observer.observe(element);
    element.addEventListener("scroll", look, { passive: true });
    return () => {
      observer.disconnect();
      element.removeEventListener("scroll", look);
    };
  }, []);
  return { shown, frame };
}

function shownIn(element: HTMLElement): ShownCells {
  const remPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const { scrollTop, scrollLeft, clientHeight, clientWidth } = element;
  return {
    rows: around(scrollTop, clientHeight, { cellPx: ROW_REM * remPx, more: MORE_ROWS }),
    columns: around(scrollLeft, clientWidth, { cellPx: COLUMN_REM * remPx, more: MORE_COLUMNS }),
    kept: element.contains(document.activeElement) ? cellOf(document.activeElement) : null,
  };
}

function around(
  startPx: number,
  lengthPx: number,
  { cellPx, more }: { readonly cellPx: number; readonly more: number },
): readonly [number, number] {
  const from = Math.floor(startPx / cellPx / more) * more - more;
  const to = Math.ceil((startPx + lengthPx) / cellPx / more) * more + more;
  return [from, to];
}

function changed(before: ShownCells, next: ShownCells): ShownCells {
  const isSame = (left: readonly [number, number], right: readonly [number, number]) =>
    left[0] === right[0] && left[1] === right[1];
  // What had the focus is drawn while it is in the range, so it matters only when that moves.
  return isSame(before.rows, next.rows) && isSame(before.columns, next.columns) ? before : next;
}

export function isWithin([from, to]: readonly [number, number], index: number): boolean {
  return index >= from && index < to;
}
