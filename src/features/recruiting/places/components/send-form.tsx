"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { sendInvitations } from "../actions";

interface SendFormProps {
  readonly callId: string;
  /** Identifies the placing on the page. */
  readonly saw: string;
  readonly endsOn: string;
  readonly timeZone: string;
  readonly count: number;
}

/** Invites everyone who has a size on this page. */
export function SendForm({ callId, saw, endsOn, timeZone, count }: SendFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Record<"endsOn", string>>(sendInvitations, {
    endsOn,
  });
  return (
    <form {...formProps} className="max-w-md">
      <FormErrors errors={formErrors} />
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="saw" value={saw} />
      <Field
        id={fields.endsOn.id}
        label="They can reply until the end of"
        hint={`Time zone: ${timeZone}. After this day, unanswered spots open up again.`}
        errors={fields.endsOn.errors}
      >
        <TextInput
          {...getInputProps(fields.endsOn, { type: "date" })}
          key="endsOn"
          aria-describedby={describedBy(fields.endsOn.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Inviting…" : count === 1 ? "Invite 1 person" : `Invite ${count} people`}
      </Button>
    </form>
  );
}
