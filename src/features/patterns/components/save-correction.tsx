"use client";

import { useActionState } from "react";
import { Notice } from "@/ui/notice";
import { SubmitButton } from "@/ui/submit-button";
import { saveCorrection } from "../correction-actions";

interface SaveCorrectionProps {
  /** What the form sends besides its own fields: ids, the base's number, the reason, and the numbers as typed. */
  readonly sends: Readonly<Record<string, string>>;
  readonly nextNumber: number;
  readonly questions: readonly string[];
}

/** Saves exactly what was shown. If saving fails, it says why and everything stays. */
export function SaveCorrection({ sends, nextNumber, questions }: SaveCorrectionProps) {
  const [failed, save] = useActionState(saveCorrection, undefined);
  return (
    <form action={save}>
      {Object.entries(sends).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {failed ? <Notice tone="problem">{failed.says}</Notice> : null}
      {questions.length === 0 ? null : (
        <label className="mb-4 flex gap-3">
          <input type="checkbox" name="meant" required className="mt-1.5 size-5 shrink-0 accent-thread" />
          <span>
            {questions.join(" ")} <strong>Yes, that’s correct.</strong>
          </span>
        </label>
      )}
      <SubmitButton waiting="Saving …">{`Save as revision ${nextNumber}`}</SubmitButton>
    </form>
  );
}
