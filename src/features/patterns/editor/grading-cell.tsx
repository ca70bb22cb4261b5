"use client";

import { memo } from "react";
import type { DraftPattern, Typed } from "@/engine/editing";
import { nearestFeasible } from "@/engine/grading";
import { formatPath, ownValue } from "@/engine/pattern";
import { useTypedEarly } from "@/ui/use-typed-early";
import { useEditing, useEditingStore, useEditingValue } from "./editing";
import { gradedText, withLock, withNumber } from "./grading-numbers";
import { SaidBelow } from "./said-below";
import { typedText } from "./fields";

interface GradingCellProps {
  readonly count: DraftPattern["counts"][number];
  readonly size: DraftPattern["sizes"][number];
  /** The next smaller size. */
  readonly before: string | undefined;
}

/**
 * Inputs beyond the table's edge need not be painted at every key. Painting is clipped at the cell's edge, so there is room for the focus ring.
 */
const DRAWN_IN_SIGHT = "-m-1.5 p-1.5 [content-visibility:auto] [contain-intrinsic-height:auto_5.25rem]";

/** One number of the grading: typed or calculated, its lock, its step, and messages about it. */
export const GradingCell = memo(function GradingCell({ count, size, before }: GradingCellProps) {
  const path = formatPath(["grading", count.id, size.id]);
  const id = `field-${path}`;
  const cell = `${count.id}.${size.id}`;
  const { value, unit, isSolved, isFaulty, read, smaller, warnings, sum, changeDraft } = useEditingValue((editing) => ({
    value: gradedText(editing.pattern, count.id, size.id),
    unit: editing.unit,
    isSolved: editing.solved.has(cell),
    isFaulty: editing.faults.has(path),
    read: ownValue(ownValue(editing.readable?.grading, count.id), size.id),
    smaller: before === undefined ? undefined : ownValue(ownValue(editing.readable?.grading, count.id), before),
    warnings: editing.warnings.get(path),
    sum: editing.sums.get(cell),
    changeDraft: editing.changeDraft,
  }));
  const text = typedText(value, "number", unit);
  const set = (typed: string, field: string | null = path) =>
    changeDraft((now) => withNumber(now, count.id, size.id, typed), field);
  const input = useTypedEarly<HTMLInputElement>(text, (typed) => set(typed));
  const said = [...(warnings ?? []), ...(sum === undefined ? [] : [sum])];
  const isMissing = text.trim() === "";
  const look = isSolved
    ? "border-dashed border-line-strong"
    : typeof value === "string"
      ? "border-ink"
      : "border-line-strong";
  return (
    <div
      className={`${DRAWN_IN_SIGHT} inline-flex flex-col items-end text-right ${said.length > 0 || isFaulty ? "w-37" : "w-18"}`}
    >
      <input
        ref={input}
        id={id}
        aria-label={`${count.label}, ${size.label}${isSolved ? ", calculated" : ""}`}
        aria-invalid={isFaulty && !isMissing}
        aria-describedby={`${id}-says ${id}-rules`}
        inputMode="numeric"
        autoComplete="off"
        value={text}
        onChange={({ target }) => set(target.value)}
        className={`numbers min-h-11 w-15 rounded-md border bg-white px-2 text-right aria-invalid:border-2 aria-invalid:border-thread ${look}`}
      />
      <span className="flex w-15 items-center justify-between">
        <LockButton count={count} size={size} number={value ?? ""} />
        <span className="numbers text-sm text-soft">{stepWords(read, smaller)}</span>
      </span>
      {isMissing ? null : <SaidBelow id={id} path={path} question={path} />}
      <div id={`${id}-rules`} aria-live="polite" className="text-sm empty:hidden">
        {said.map((says) => (
          <p key={says} className="mt-1 font-semibold text-thread">
            ▲ {says}
          </p>
        ))}
        {said.length > 0 && read !== undefined ? (
          <Nearest count={count.id} size={size.id} read={read} onPick={(typed) => set(typed, null)} />
        ) : null}
      </div>
    </div>
  );
});

interface NearestProps {
  readonly count: string;
  readonly size: string;
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

function LockButton({ count, size, number }: Pick<GradingCellProps, "count" | "size"> & { readonly number: Typed }) {
  const { change } = useEditingStore().getState();
  const locked = ownValue(count.locked, size.id) !== undefined;
  return (
    <button
      type="button"
      aria-pressed={locked}
      aria-label={`Lock ${count.label}, ${size.label}`}
      disabled={!locked && String(number).trim() === ""}
      title={locked ? "Unlock this number" : "Lock this number while the others are calculated"}
      onClick={() => change((now) => withLock(now, count.id, size.id, locked ? null : number), null)}
      className={`-ml-1 inline-flex size-7 items-center justify-center rounded hover:bg-band disabled:opacity-30 ${locked ? "text-ink" : "text-line-strong"}`}
    >
      <svg viewBox="0 0 16 16" className="size-4" aria-hidden="true">
        <path
          d={locked ? "M5 7V5a3 3 0 0 1 6 0v2" : "M5 7V5a3 3 0 0 1 5.8-1.2"}
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
        />
        <rect
          x="3"
          y="7"
          width="10"
          height="7"
          rx="1"
          fill={locked ? "currentColor" : "none"}
          stroke="currentColor"
          strokeWidth="1.3"
        />
      </svg>
    </button>
  );
}

function stepWords(number: number | undefined, smaller: number | undefined): string {
  if (number === undefined || smaller === undefined) return "";
  const step = number - smaller;
  if (step === 0) return "0";
  return step < 0 ? `−${-step}` : `+${step}`;
}
