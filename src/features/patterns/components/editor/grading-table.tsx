"use client";

import { useMemo } from "react";
import { brokenTies, type Count, type PatternDocument } from "@/engine/pattern";
import { MatrixTable } from "@/ui/matrix-table";
import { repeatWords } from "../pattern-words";
import { useEditing } from "./editing";
import { GradingCell } from "./grading-cell";
import { withNumber } from "./grading-numbers";
import { GridArea } from "./grid-area";

/** Sizes across, counts down: every number with its lock and its step from the size before. */
export function GradingTable() {
  const { pattern, readable, changeDraft } = useEditing();
  const { counts, sizes } = pattern;
  const sums = useMemo(() => (readable === null ? new Map<string, string>() : brokenSums(readable)), [readable]);
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
    head: <CountHead label={count.label} rule={readable?.counts.find(({ id }) => id === count.id)} />,
    cells: sizes.map((size, column) => (
      <div key={size.id} data-row={row} data-column={column}>
        <GradingCell
          count={count}
          size={size}
          before={sizes[column - 1]?.id}
          brokenSum={sums.get(`${count.id}.${size.id}`)}
        />
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
        />
      </GridArea>
      <p className="mt-2 max-w-3xl text-sm text-soft">
        Dashed: solved. Whole line: typed, or as in the revision. The small number is the step from the size before. A
        closed lock holds a number while the others are solved.
      </p>
    </>
  );
}

function CountHead({ label, rule }: { readonly label: string; readonly rule: Count | undefined }) {
  const words = rule && [repeatWords(rule), rule.least === undefined ? null : `at least ${rule.least}`];
  return (
    <>
      {label || <span className="text-soft">without a name</span>}
      <span className="block text-sm text-soft">{words?.filter((each) => each !== null).join(", ")}</span>
    </>
  );
}

/** What is said of a number whose sum does not come out, by count and size. */
function brokenSums(pattern: PatternDocument): Map<string, string> {
  const said = new Map<string, string>();
  for (const { tie, size, left, right } of brokenTies(pattern)) {
    const named = pattern.ties[tie];
    if (named === undefined) continue;
    for (const id of [named.count, ...named.equals.map(({ count }) => count)])
      said.set(`${id}.${size.id}`, `${left} and ${right} must meet.`);
  }
  return said;
}
