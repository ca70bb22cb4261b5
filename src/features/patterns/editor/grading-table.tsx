"use client";

import { memo, type FocusEvent } from "react";
import type { DraftPattern } from "@/engine/editing";
import { repeatWords } from "../pattern-copy";
import { CellBar } from "./cell-bar";
import { useEditingStore, useEditingValue } from "./editing";
import { GradingCell } from "./grading-cell";
import { gradedText, withNumber } from "./grading-numbers";
import { GridArea } from "./grid-area";
import { cellOf } from "./grid-cells";
import { isWithin, useShownCells, type ShownCells } from "./shown-cells";

/** From so many cells on, only those in sight are drawn. */
const LARGE = 500;
const ALL: readonly [number, number] = [0, Infinity];

/** Sizes across, counts down: every number with its lock and its step from the size before. */
export function GradingTable() {
  const store = useEditingStore();
  const { counts, sizes } = useEditingValue(({ pattern }) => ({ counts: pattern.counts, sizes: pattern.sizes }));
  const { shown, frame } = useShownCells();
  const isLarge = counts.length * sizes.length >= LARGE;
  const paste = (block: readonly (readonly string[])[], row: number, column: number) =>
    store.getState().changeDraft((draft) => {
      const cells = block.flatMap((texts, down) => texts.map((text, across) => ({ text, down, across })));
      return cells.reduce((now, { text, down, across }) => {
        const [count, size] = [counts[row + down], sizes[column + across]];
        return count && size ? withNumber(now, count.id, size.id, text.trim()) : now;
      }, draft);
    }, null);
  const textAt = (row: number, column: number) =>
    String(gradedText(store.getState().pattern, counts[row]?.id ?? "", sizes[column]?.id ?? "") ?? "");
  const choose = ({ target }: FocusEvent) => {
    const at = cellOf(target);
    const [count, size] = [counts[at?.row ?? -1], sizes[at?.column ?? -1]];
    if (count && size) store.getState().chooseCell({ count: count.id, size: size.id });
  };
  return (
    <>
      <CellBar />
      <GridArea onBlock={paste} textAt={textAt}>
        <div
          ref={frame}
          role="region"
          aria-label="Numbers of every count"
          tabIndex={0}
          onFocus={choose}
          className="grading-grid relative rounded-b-sheet border border-line bg-sheet shadow-sheet"
        >
          <table>
            <thead>
              <tr>
                <th scope="col">Stitches or rows</th>
                {sizes.map(({ id, label }) => (
                  <th key={id} scope="col" title={label}>
                    {label}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {counts.map((count, row) => (
                <GradingRow
                  key={count.id}
                  count={count}
                  row={row}
                  sizes={sizes}
                  columns={isLarge ? columnsOf(shown, row) : ALL}
                  keptColumn={shown.kept?.row === row ? shown.kept.column : -1}
                />
              ))}
            </tbody>
          </table>
        </div>
      </GridArea>
      <p className="mt-2 max-w-3xl text-sm text-soft">
        Italic: calculated. Bold: typed since the revision. The small number is the step from the size before. Shift
        with the arrows or the mouse marks several numbers to copy, paste over or delete.
      </p>
    </>
  );
}

/** The columns to draw of a row; null for none. */
function columnsOf({ rows, columns, kept }: ShownCells, row: number): readonly [number, number] | null {
  return isWithin(rows, row) || kept?.row === row ? columns : null;
}

interface GradingRowProps {
  readonly count: DraftPattern["counts"][number];
  readonly row: number;
  readonly sizes: DraftPattern["sizes"];
  readonly columns: readonly [number, number] | null;
  readonly keptColumn: number;
}

const GradingRow = memo(function GradingRow({ count, row, sizes, columns, keptColumn }: GradingRowProps) {
  return (
    <tr>
      <CountHead id={count.id} label={count.label} />
      {columns === null ? (
        <td colSpan={sizes.length} />
      ) : (
        sizes.map((size, column) => (
          <td key={size.id} data-row={row} data-column={column}>
            {isWithin(columns, column) || column === keptColumn ? (
              <GradingCell count={count} size={size} before={sizes[column - 1]?.id} />
            ) : null}
          </td>
        ))
      )}
    </tr>
  );
});

function CountHead({ id, label }: { readonly id: string; readonly label: string }) {
  const rules = useEditingValue(({ readable }) => {
    const count = readable?.counts.find((each) => each.id === id);
    return count && [repeatWords(count), count.least === undefined ? null : `at least ${count.least}`];
  });
  const words = rules?.filter((each) => each !== null).join(", ") ?? "";
  return (
    <th scope="row" title={[label, words].filter((each) => each !== "").join(": ")}>
      {label || <span className="text-soft">without a name</span>}
      {words === "" ? null : <span className="ml-2 text-sm text-soft">{words}</span>}
    </th>
  );
}
