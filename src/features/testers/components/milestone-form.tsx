"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { Field, describedBy, TextInput } from "@/ui/field";
import { tapMilestone } from "../milestone-actions";

interface MilestoneFormProps {
  readonly testerId: string;
  readonly pageKey: string;
}

/** Three taps, and a word with them where she likes. */
export function MilestoneForm({ testerId, pageKey }: MilestoneFormProps) {
  const [failed, send, isSending] = useActionState(tapMilestone, undefined);
  // React empties a form whose action it calls itself; handed over by hand, what was typed stays where it was refused.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
    const form = new FormData(event.currentTarget, submitter);
    startTransition(() => send(form));
  };
  return (
    <form action={send} onSubmit={onSubmit}>
      <input type="hidden" name="testerId" value={testerId} />
      <input type="hidden" name="key" value={pageKey} />
      <Field id="milestone-note" label="A word with it (optional)" errors={failed ? [failed.says] : undefined}>
        <TextInput id="milestone-note" name="note" maxLength={500} aria-describedby={describedBy("milestone-note")} />
      </Field>
      <div className="flex flex-wrap gap-3">
        <Button type="submit" name="word" value="track" look="quiet" disabled={isSending}>
          On track
        </Button>
        <Button type="submit" name="word" value="behind" look="quiet" disabled={isSending}>
          Behind
        </Button>
        <Button type="submit" name="word" value="stuck" look="quiet" disabled={isSending}>
          Stuck
        </Button>
      </div>
    </form>
  );
}
