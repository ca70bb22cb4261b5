"use client";

import { own, type PatternDocument, type Tie } from "@/engine/pattern";
import { useEditing } from "./editing";

/** A sum with the chosen size's numbers, and the sizes in which it does not come out. */
export function TieReckoned({ at }: { readonly at: number }) {
  const { document, size, warnings } = useEditing();
  const tie = document?.ties[at];
  if (!document || !tie) return null;
  const label = document.sizes.find(({ id }) => id === size)?.label ?? size;
  const words = reckonedWords(document, tie, size);
  return (
    <div aria-live="polite" className="numbers mt-2 text-sm text-soft">
      {words === null ? null : (
        <p>
          In {label}: {words}
        </p>
      )}
      {warnings.get(`ties[${at}]`)?.map((says) => (
        <p key={says} className="font-semibold text-thread">
          ▲ {says.charAt(0).toUpperCase() + says.slice(1)}
        </p>
      ))}
    </div>
  );
}

function reckonedWords(pattern: PatternDocument, tie: Tie, size: string): string | null {
  const numberOf = (count: string) => own(own(pattern.grading, count), size);
  const count = numberOf(tie.count);
  const parts = tie.equals.map(({ times, count: id }) => ({ times, value: numberOf(id) }));
  if (count === undefined || parts.some(({ value }) => value === undefined)) return null;
  const sum = parts.reduce((total, { times, value = 0 }) => total + times * value, 0);
  const right = parts.map(({ times, value = 0 }) => timesWords(times, value)).join(" + ");
  const left = (tie.per ?? 1) * count;
  const off = left - sum;
  return `${timesWords(tie.per ?? 1, count)} = ${left}, and ${right} = ${sum}${off === 0 ? "" : `, ${Math.abs(off)} ${off > 0 ? "less" : "more"}`}.`;
}

function timesWords(times: number, value: number): string {
  return times === 1 ? String(value) : `${times} × ${value}`;
}
