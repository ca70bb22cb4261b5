"use client";

import { useActionState } from "react";
import { decideOnApplication } from "../../decision-actions";

interface DecisionButtonsProps {
  readonly callId: string;
  readonly applicationId: string;
  /** The applicant's name, for screen readers. */
  readonly name: string;
  readonly word: "yes" | "maybe" | "no" | null;
}

const WORDS = [
  { word: "yes", label: "Yes" },
  { word: "maybe", label: "Maybe" },
  { word: "no", label: "No" },
] as const;

/** Yes, maybe or no; pressing the same button again clears the decision. */
export function DecisionButtons({ callId, applicationId, name, word: said }: DecisionButtonsProps) {
  const [failed, send, isSending] = useActionState(decideOnApplication, undefined);
  return (
    <form action={send}>
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="applicationId" value={applicationId} />
      <div role="group" aria-label={`Your decision on ${name}`} className="word-buttons">
        {WORDS.map(({ word, label }) => (
          <button
            key={word}
            type="submit"
            name="word"
            value={word === said ? "" : word}
            aria-pressed={word === said}
            disabled={isSending}
          >
            {label}
          </button>
        ))}
      </div>
      {failed ? (
        <p role="alert" className="mt-1 max-w-xs text-sm font-semibold text-thread">
          ▲ {failed.says}
        </p>
      ) : null}
    </form>
  );
}
