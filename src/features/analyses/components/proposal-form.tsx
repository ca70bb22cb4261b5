"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { planChanges } from "../plan-actions";
import type { Proposal } from "../proposals";
import { ProposalCard } from "./proposal-card";

interface ProposalFormProps {
  readonly callId: string;
  readonly baseNumber: number;
  /** Names this form's sending, so that sending it twice asks once. */
  readonly formKey: string;
  readonly proposals: readonly Proposal[];
}

/** Each proposal to take or leave; sending it shows what changes and writes nothing into the pattern. */
export function ProposalForm({ callId, baseNumber, formKey, proposals }: ProposalFormProps) {
  const [failed, send, pending] = useActionState(planChanges, undefined);
  // React empties a form whose action it calls itself; handed over by hand, what stood chosen stays.
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
        {proposals.map((proposal, at) => (
          <ProposalCard
            key={proposal.sentence}
            proposal={proposal}
            at={at}
            chosen={(failed && "chosen" in failed ? failed.chosen?.[at] : undefined) ?? proposal.preselected}
          />
        ))}
      </ol>
      {failed ? <Notice tone="problem">{failed.says}</Notice> : null}
      <div className="flex flex-wrap items-center gap-x-5 gap-y-3">
        <Button type="submit" disabled={pending} aria-live="polite">
          {pending ? "Working it out …" : "See what changes"}
        </Button>
        <p className="text-sm text-soft">This only shows. Nothing is saved before you say so on the next page.</p>
      </div>
    </form>
  );
}
