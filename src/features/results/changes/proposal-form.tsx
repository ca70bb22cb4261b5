"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { planChanges } from "./plan-actions";
import type { Proposal } from "./proposals";
import { ProposalCard } from "./proposal-card";

interface ProposalFormProps {
  readonly callId: string;
  readonly baseNumber: number;
  /** Idempotency key: sending the form twice makes one plan. */
  readonly formKey: string;
  readonly proposals: readonly Proposal[];
}

/** Each proposal to accept or leave; sending shows what changes and saves nothing. */
export function ProposalForm({ callId, baseNumber, formKey, proposals }: ProposalFormProps) {
  const [failed, send, pending] = useActionState(planChanges, undefined);
  // React empties a form whose action it calls itself; calling the action by hand keeps what was chosen.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => send(form));
  };
  return (
    <form action={send} onSubmit={onSubmit}>
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="baseNumber" value={baseNumber} />
      <input type="hidden" name="key" value={formKey} />
      <ol className="mb-6 grid gap-5">
        {proposals.map((proposal, index) => (
          <ProposalCard
            key={proposal.sentence}
            proposal={proposal}
            index={index}
            chosen={(failed && "chosen" in failed ? failed.chosen?.[index] : undefined) ?? proposal.preselected}
          />
        ))}
      </ol>
      {failed ? <Notice tone="problem">{failed.says}</Notice> : null}
      <div className="flex flex-wrap items-center gap-x-5 gap-y-3">
        <Button type="submit" disabled={pending} aria-live="polite">
          {pending ? "Calculating …" : "Show what changes"}
        </Button>
        <p className="text-sm text-soft">Nothing is saved yet. You can save on the next page.</p>
      </div>
    </form>
  );
}
