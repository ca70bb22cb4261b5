"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextArea } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { savePlannedRevision } from "./plan-actions";

interface SavePlanProps {
  readonly callId: string;
  readonly planId: string;
  readonly reason: string;
  readonly nextNumber: number;
  /** Whom a correction of the text would still reach in time, in a sentence; null where it reaches nobody. */
  readonly told: string | null;
}

/** Saves what the page shows. If saving fails, it says why and the reason stays as typed. */
export function SavePlan({ callId, planId, reason, nextNumber, told }: SavePlanProps) {
  const [failed, save, pending] = useActionState(savePlannedRevision, undefined);
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => save(form));
  };
  return (
    <form action={save} onSubmit={onSubmit} className="max-w-3xl">
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="planId" value={planId} />
      <Field
        id="reason"
        label="What you change and why"
        hint="Shown with the new revision. Change it as you like; what you accepted and the evidence are saved with it anyway."
      >
        <TextArea
          id="reason"
          name="reason"
          rows={6}
          required
          maxLength={1000}
          defaultValue={reason}
          aria-describedby={describedBy("reason")}
        />
      </Field>
      {told === null ? null : (
        <label className="mb-5 flex min-h-11 cursor-pointer gap-3">
          <input type="checkbox" name="tells" defaultChecked className="mt-0.5 size-5 shrink-0 accent-thread" />
          <span className="min-w-0 wrap-anywhere">
            Publish it as a correction to the testers of that size
            <span className="numbers block text-sm text-soft">{told}</span>
          </span>
        </label>
      )}
      {failed ? <Notice tone="problem">{failed.says}</Notice> : null}
      <Button type="submit" disabled={pending} aria-live="polite">
        {pending ? "Saving …" : `Save as revision ${nextNumber}`}
      </Button>
    </form>
  );
}
