"use client";

import { useRouter } from "next/navigation";
import { useEffect, useRef, type KeyboardEvent, type MouseEvent, type ReactNode } from "react";

const STEPS: Readonly<Record<string, { readonly down: number; readonly across: number }>> = {
  ArrowUp: { down: -1, across: 0 },
  ArrowDown: { down: 1, across: 0 },
  ArrowLeft: { down: 0, across: -1 },
  ArrowRight: { down: 0, across: 1 },
};

/**
 * Makes the cells one Tab stop with arrow keys between them; Enter opens a cell and moves to its panel, Escape moves back. Without scripts every cell is a plain link.
 */
export function GridKeys({ opened, children }: { readonly opened: string | undefined; readonly children: ReactNode }) {
  const router = useRouter();
  const frame = useRef<HTMLDivElement>(null);
  const goingTo = useRef<string>(undefined);

  useEffect(() => {
    const cells = cellsIn(frame.current);
    const start = cells.find(({ dataset }) => dataset.cell === opened) ?? cells[0];
    if (start) makeStop(cells, start);
    if (opened === undefined || goingTo.current !== opened) return;
    goingTo.current = undefined;
    const panel = frame.current?.querySelector<HTMLElement>("[data-panel]");
    panel?.focus({ preventScroll: true });
    panel?.scrollIntoView({ block: "nearest", behavior: "smooth" });
  }, [opened, children]);

  const onKeyDown = (event: KeyboardEvent) => {
    const cells = cellsIn(frame.current);
    if (event.key === "Escape") cells.find(({ dataset }) => dataset.cell === opened)?.focus();
    const step = STEPS[event.key];
    const from = cells.find((cell) => cell === event.target);
    if (step === undefined || from === undefined) return;
    const next = neighbour(frame.current, from, step);
    event.preventDefault();
    if (next === undefined) return;
    makeStop(cells, next);
    next.focus();
  };

  const onClick = (event: MouseEvent) => {
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>("a[data-cell]") : null;
    if (link === null) return;
    event.preventDefault();
    goingTo.current = link.dataset.cell;
    router.push(link.pathname + link.search, { scroll: false });
  };

  return (
    <div ref={frame} onKeyDown={onKeyDown} onClick={onClick}>
      {children}
    </div>
  );
}

function cellsIn(frame: HTMLElement | null): HTMLAnchorElement[] {
  return [...(frame?.querySelectorAll<HTMLAnchorElement>("a[data-cell]") ?? [])];
}

function makeStop(cells: readonly HTMLAnchorElement[], stop: HTMLAnchorElement): void {
  for (const cell of cells) cell.tabIndex = cell === stop ? 0 : -1;
}

function neighbour(
  frame: HTMLElement | null,
  from: HTMLAnchorElement,
  { down, across }: { readonly down: number; readonly across: number },
): HTMLAnchorElement | undefined {
  const rows = [...(frame?.querySelectorAll("tr") ?? [])].map(cellsIn).filter((cells) => cells.length > 0);
  const index = rows.findIndex((cells) => cells.includes(from));
  const column = rows[index]?.indexOf(from) ?? -1;
  return rows[index + down]?.[column + across];
}
