"use client";

import { nearestFeasible } from "@/engine/grading";
import { formatPath, ownValue } from "@/engine/pattern";
import { useEditing, useEditingValue } from "./editing";
import type { GradedCell } from "./editing-store";
import { SAID_OF_CELL } from "./grading-cell";
import { gradedText, withLock, withNumber } from "./grading-numbers";
import { SaidBelow } from "./said-below";

/** Above the table, about the number that is typed in: which it is, what is wrong with it, and the nearest that would do. */
export function CellBar() {
  const cell = useEditingValue((editing) => editing.cell);
  return (
    <div
      id={SAID_OF_CELL}
      className="min-h-12 rounded-t-sheet border border-b-0 border-line bg-paper px-3 py-2 text-sm"
    >
      {cell === null ? (
        <p className="text-soft">Choose a number to see its rules. The arrows and Enter move through the table.</p>
      ) : (
        <OfCell cell={cell} />
      )}
    </div>
  );
}

function OfCell({ cell: { count: countId, size: sizeId } }: { readonly cell: GradedCell }) {
  const path = formatPath(["grading", countId, sizeId]);
  const { count, size, number, isLocked, read, warnings, sum, change, changeDraft } = useEditingValue((editing) => {
    const counted = editing.pattern.counts.find(({ id }) => id === countId);
    return {
      count: counted?.label,
      size: editing.pattern.sizes.find(({ id }) => id === sizeId)?.label,
      number: gradedText(editing.pattern, countId, sizeId) ?? "",
      isLocked: ownValue(counted?.locked, sizeId) !== undefined,
      read: ownValue(ownValue(editing.readable?.grading, countId), sizeId),
      warnings: editing.warnings.get(path),
      sum: editing.sums.get(`${countId}.${sizeId}`),
      change: editing.change,
      changeDraft: editing.changeDraft,
    };
  });
  if (count === undefined || size === undefined) return null;
  const said = [...(warnings ?? []), ...(sum === undefined ? [] : [sum])];
  const isMissing = String(number).trim() === "";
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-1">
      <p className="font-semibold wrap-anywhere">
        {count || "Without a name"}, {size}
      </p>
      <label className="flex min-h-6 items-center gap-2">
        <input
          type="checkbox"
          checked={isLocked}
          disabled={isMissing}
          onChange={({ target }) =>
            change((now) => withLock(now, countId, sizeId, target.checked ? number : null), null)
          }
        />
        Keep it while the others are calculated
      </label>
      <div className="min-w-0">
        {isMissing ? null : <SaidBelow id={`field-${path}`} path={path} question={path} />}
        <div aria-live="polite" className="flex flex-wrap gap-x-3 empty:hidden">
          {said.map((says) => (
            <p key={says} className="font-semibold text-thread">
              ▲ {says}
            </p>
          ))}
          {said.length > 0 && read !== undefined ? (
            <Nearest
              count={countId}
              size={sizeId}
              read={read}
              onPick={(typed) => changeDraft((now) => withNumber(now, countId, sizeId, typed), null)}
            />
          ) : null}
        </div>
      </div>
    </div>
  );
}

interface NearestProps extends GradedCell {
  readonly read: number;
  readonly onPick: (text: string) => void;
}

/** The nearest numbers that meet every rule, each a button. */
function Nearest({ count, size, read, onPick }: NearestProps) {
  const { readable } = useEditing("readable");
  if (readable === null) return null;
  const { below, above } = nearestFeasible(readable, { count, size, typed: read });
  const numbers = [...new Set([below, above])].filter((number) => number !== null && number !== read);
  if (numbers.length === 0) return <p className="text-soft">No number here meets every rule.</p>;
  return (
    <p className="flex flex-wrap items-center gap-x-2">
      Nearest:
      {numbers.map((number) => (
        <button
          key={number}
          type="button"
          className="text-link numbers min-h-6 px-1"
          onClick={() => onPick(String(number))}
        >
          {number}
        </button>
      ))}
    </p>
  );
}
