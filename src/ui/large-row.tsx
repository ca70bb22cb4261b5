"use client";

import { useEffect, useRef, useState, type ReactNode } from "react";

/** How far from the window a row is drawn already. */
const NEAR = "200px 0px";
const FIRST_DRAWN = 6;
/** Of a row that was never drawn, until it is. */
const EXPECTED_HEIGHT_PX = 90;

interface LargeRowProps {
  readonly index: number;
  readonly className: string;
  readonly head: ReactNode;
  readonly columnCount: number;
  readonly children: ReactNode;
}

/**
 * A row of a table with so many cells that a browser would take long to lay them all out at every key. Far from the window
 * it is its head and an empty cell of its own height; a row that has the focus stays.
 */
export function LargeRow({ index, className, head, columnCount, children }: LargeRowProps) {
  const row = useRef<HTMLTableRowElement>(null);
  const [emptyHeightPx, setEmptyHeightPx] = useState(index < FIRST_DRAWN ? null : EXPECTED_HEIGHT_PX);
  useEffect(() => {
    const element = row.current;
    if (element === null) return;
    const observer = new IntersectionObserver(
      (entries) => {
        const last = entries.at(-1);
        if (last === undefined) return;
        const isDrawn = last.isIntersecting || element.contains(document.activeElement);
        setEmptyHeightPx(isDrawn ? null : last.boundingClientRect.height);
      },
      { rootMargin: NEAR },
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <tr ref={row} className={className}>
      {head}
      {emptyHeightPx === null ? children : <td colSpan={columnCount} style={{ height: emptyHeightPx }} />}
    </tr>
  );
}
