import { cmOfSize, ownValue } from "@/engine/pattern";
import { formatLength } from "@/ui/format-length";
import { useEditingValue } from "./editing";
import type { DraftTerm } from "./term-choices";
import { signOf } from "./term-sign";

/** Warns where a line takes an edging or a seam that takes length already, which adds it. */
export function TakenTwice({ term }: { readonly term: DraftTerm }) {
  const words = useEditingValue(({ readable, size, unit }) => {
    if (!("allowance" in term) || signOf(term.times) === 1) return null;
    const allowance = readable?.allowances.find(({ id }) => id === term.allowance);
    if (allowance === undefined) return null;
    const { cm } = allowance;
    const takenCm = typeof cm === "number" || ownValue(cm, size) !== undefined ? -cmOfSize(cm, size) : 0;
    if (takenCm <= 0) return null;
    const length = formatLength(takenCm, unit);
    return `“${allowance.label}” takes ${length} by itself, so “less” adds ${length}. Choose “adds” to take it.`;
  });
  return (
    <p aria-live="polite" className="mt-1 text-sm font-semibold text-thread empty:hidden">
      {words === null ? null : `▲ ${words}`}
    </p>
  );
}
