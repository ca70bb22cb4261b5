"use client";

import { MatrixTable } from "@/ui/matrix-table";
import { repeatWords } from "../pattern-copy";
import { useEditingValue } from "./editing";
import { GradingCell } from "./grading-cell";
import { withNumber } from "./grading-numbers";
import { GridArea } from "./grid-area";

/** Sizes across, counts down: every number with its lock and its step from the size before. */
export function GradingTable() {
  const { counts, sizes, changeDraft } = useEditingValue(({ pattern, changeDraft }) => ({
    counts: pattern.counts,
    sizes: pattern.sizes,
    changeDraft,
  }));
  const paste = (block: readonly (readonly string[])[], row: number, column: number) =>
    changeDraft((draft) => {
      const cells = block.flatMap((texts, down) => texts.map((text, across) => ({ text, down, across })));
      return cells.reduce((now, { text, down, across }) => {
        const [count, size] = [counts[row + down], sizes[column + across]];
        return count && size ? withNumber(now, count.id, size.id, text.trim()) : now;
      }, draft);
    }, null);
  const rows = counts.map((count, row) => ({
    key: count.id,
    head: <CountHead id={count.id} label={count.label} />,
    cells: sizes.map((size, column) => (
      <div key={size.id} data-row={row} data-column={column}>
        <GradingCell count={count} size={size} before={sizes[column - 1]?.id} />
      </div>
    )),
  }));
  return (
    <>
      <GridArea onBlock={paste}>
        <MatrixTable
          label="Numbers of every count"
          corner="Stitches or rows"
          columns={sizes.map(({ id, label }) => ({ key: id, label }))}
          rows={rows}
          isLive
        />
      </GridArea>
      <p className="mt-2 max-w-3xl text-sm text-soft">
        Dashed line: calculated. Solid line: typed, or as in the revision. The small number is the step from the size
        before. A locked number stays while the others are calculated.
      </p>
    </>
  );
}

function CountHead({ id, label }: { readonly id: string; readonly label: string }) {
  const rules = useEditingValue(({ readable }) => {
    const count = readable?.counts.find((each) => each.id === id);
    return count && [repeatWords(count), count.least === undefined ? null : `at least ${count.least}`];
  });
  return (
    <>
      {label || <span className="text-soft">without a name</span>}
      <span className="block text-sm text-soft">{rules?.filter((each) => each !== null).join(", ")}</span>
    </>
  );
}
