"use client";

import { ownValue, tieSides, type PatternDocument, type Tie } from "@/engine/pattern";
import { useEditing } from "./editing";

/** A sum with the chosen size's numbers, and the sizes in which it does not match. */
export function TieResult({ index }: { readonly index: number }) {
  const { document, size, warnings } = useEditing("document", "size", "warnings");
  const tie = document?.ties[index];
  if (!document || !tie) return null;
  const label = document.sizes.find(({ id }) => id === size)?.label ?? size;
  const words = resultWords(document, tie, size);
  return (
    <div aria-live="polite" className="numbers mt-2 text-sm text-soft">
      {words === null ? null : (
        <p>
          In {label}: {words}
        </p>
      )}
      {warnings.get(`ties[${index}]`)?.map((says) => (
        <p key={says} className="font-semibold text-thread">
          ▲ {says.charAt(0).toUpperCase() + says.slice(1)}
        </p>
      ))}
    </div>
  );
}

function resultWords(pattern: PatternDocument, tie: Tie, size: string): string | null {
  const numberOf = (count: string) => ownValue(ownValue(pattern.grading, count), size);
  const count = numberOf(tie.count);
  const of = pattern.sizes.find(({ id }) => id === size);
  const sides = of && tieSides(pattern, tie, of);
  if (count === undefined || !sides) return null;
  const { left, right } = sides;
  const parts = tie.equals.map((part) => timesWords(part.times, numberOf(part.count) ?? 0)).join(" + ");
  const off = left === right ? "" : `, ${Math.abs(left - right)} ${left > right ? "less" : "more"}`;
  return `${timesWords(tie.per ?? 1, count)} = ${left}, and ${parts} = ${right}${off}.`;
}

function timesWords(times: number, value: number): string {
  return times === 1 ? String(value) : `${times} × ${value}`;
}
