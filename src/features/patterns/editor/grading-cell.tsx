"use client";

import { memo } from "react";
import type { DraftPattern, Typed } from "@/engine/editing";
import { formatPath, ownValue } from "@/engine/pattern";
import { useTypedEarly } from "@/ui/use-typed-early";
import { useEditingStore, useEditingValue } from "./editing";
import { typedText } from "./fields";
import { gradedText, withLock, withNumber } from "./grading-numbers";

interface GradingCellProps {
  readonly count: DraftPattern["counts"][number];
  readonly size: DraftPattern["sizes"][number];
  /** The next smaller size. */
  readonly before: string | undefined;
}

/** One number of the grading: typed or calculated, its lock, its step, and whether something is said of it above the table. */
export const GradingCell = memo(function GradingCell({ count, size, before }: GradingCellProps) {
  const path = formatPath(["grading", count.id, size.id]);
  const cell = `${count.id}.${size.id}`;
  const { value, unit, isSolved, isFaulty, isMarked, step, changeDraft } = useEditingValue((editing) => {
    const numbers = ownValue(editing.readable?.grading, count.id);
    return {
      value: gradedText(editing.pattern, count.id, size.id),
      unit: editing.unit,
      isSolved: editing.solved.has(cell),
      isFaulty: editing.faults.has(path),
      isMarked: editing.warnings.has(path) || editing.sums.has(cell) || editing.questions.get(path)?.meant === false,
      step: before === undefined ? "" : stepWords(ownValue(numbers, size.id), ownValue(numbers, before)),
      changeDraft: editing.changeDraft,
    };
  });
  const text = typedText(value, "number", unit);
  const set = (typed: string) => changeDraft((now) => withNumber(now, count.id, size.id, typed), path);
  const input = useTypedEarly<HTMLInputElement>(text, set);
  const isWrong = isFaulty && text.trim() !== "";
  return (
    <>
      <input
        ref={input}
        id={`field-${path}`}
        aria-label={`${count.label}, ${size.label}${isSolved ? ", calculated" : ""}`}
        aria-invalid={isWrong}
        aria-describedby={isWrong || isMarked ? SAID_OF_CELL : undefined}
        inputMode="numeric"
        autoComplete="off"
        value={text}
        onChange={({ target }) => set(target.value)}
        data-kind={isSolved ? "calculated" : typeof value === "string" ? "typed" : undefined}
        data-said={isWrong || isMarked ? "" : undefined}
        className="grading-input numbers"
      />
      <span className="grading-step numbers">{step}</span>
      <LockButton count={count} size={size} number={value ?? ""} />
    </>
  );
});

/** Id of what is said of the cell that has the focus. */
export const SAID_OF_CELL = "said-of-cell";

function LockButton({ count, size, number }: Pick<GradingCellProps, "count" | "size"> & { readonly number: Typed }) {
  const { change } = useEditingStore().getState();
  const locked = ownValue(count.locked, size.id) !== undefined;
  return (
    <button
      type="button"
      tabIndex={-1}
      aria-pressed={locked}
      aria-label={`Lock ${count.label}, ${size.label}`}
      disabled={!locked && String(number).trim() === ""}
      title={locked ? "Unlock this number" : "Lock this number while the others are calculated"}
      onClick={() => change((now) => withLock(now, count.id, size.id, locked ? null : number), null)}
      className="grading-lock"
    />
  );
}

function stepWords(number: number | undefined, smaller: number | undefined): string {
  if (number === undefined || smaller === undefined) return "";
  const step = number - smaller;
  if (step === 0) return "0";
  return step < 0 ? `−${-step}` : `+${step}`;
}
