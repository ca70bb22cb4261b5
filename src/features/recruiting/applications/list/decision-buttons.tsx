"use client";

import { useActionState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { decideOnApplication } from "./decision-actions";

interface DecisionButtonsProps {
  readonly callId: string;
  readonly applicationId: string;
  /** The applicant's name, for screen readers. */
  readonly name: string;
  readonly decision: "yes" | "maybe" | "no" | null;
}

const DECISIONS = [
  { decision: "yes", label: "Yes" },
  { decision: "maybe", label: "Maybe" },
  { decision: "no", label: "No" },
] as const;

/** Yes, maybe or no; pressing the same button again clears the decision. */
export function DecisionButtons({ callId, applicationId, name, decision: current }: DecisionButtonsProps) {
  const [failed, send, isSending] = useActionState(decideOnApplication, undefined);
  return (
    <form action={send}>
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="applicationId" value={applicationId} />
      <div role="group" aria-label={`Your decision on ${name}`} className="word-buttons">
        {DECISIONS.map(({ decision, label }) => (
          <button
            key={decision}
            type="submit"
            name="decision"
            value={decision === current ? "" : decision}
            aria-pressed={decision === current}
            disabled={isSending}
          >
            {label}
          </button>
        ))}
      </div>
      <ActionFailure failed={failed} className="mt-1 max-w-xs" />
    </form>
  );
}
