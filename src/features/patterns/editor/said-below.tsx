"use client";

import { faultSentence, type DraftQuestion } from "@/engine/editing";
import { useEditing, useEditingValue } from "./editing";

interface SaidBelowProps {
  readonly id: string;
  /** Path in the draft. */
  readonly path: string;
  /** Path of the number as in `editFields`, for a question about an unusual one. */
  readonly question?: string;
}

/** Errors of a field, or a question about it, right below it and announced. */
export function SaidBelow({ id, path, question }: SaidBelowProps) {
  const faults = useEditingValue((editing) => editing.faults.get(path));
  const asked = useEditingValue((editing) => (question === undefined ? undefined : editing.questions.get(question)));
  return (
    <div id={`${id}-says`} aria-live="polite" className="text-sm empty:hidden">
      {faults?.map((says) => (
        <p key={says} className="mt-1 font-semibold text-thread">
          ▲ {faultSentence(says)}
        </p>
      ))}
      {asked && faults === undefined ? <Question {...asked} /> : null}
    </div>
  );
}

function Question({ path, value, message, meant }: DraftQuestion) {
  const { changeDraft } = useEditing("changeDraft");
  const answer = (isMeant: boolean) =>
    changeDraft((draft) => {
      const { [path]: _before, ...others } = draft.meant;
      return { ...draft, meant: isMeant ? { ...others, [path]: value } : others };
    }, null);
  return (
    <label className="mt-1 block text-left">
      {message}
      <span className="mt-1 flex min-h-6 items-center gap-2 font-semibold">
        <input type="checkbox" checked={meant} onChange={({ target }) => answer(target.checked)} />
        Yes, that’s correct
      </span>
    </label>
  );
}
