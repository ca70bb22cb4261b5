"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { wayField } from "@/features/patterns/schema";
import { Button } from "@/ui/button";
import { describedBy, Field, Select, TextArea, TextInput } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { Sheet } from "@/ui/sheet";
import { planCorrection } from "../plan-actions";
import type { CorrectedField } from "../correction";

interface CorrectFormProps {
  readonly callId: string;
  readonly cell: string;
  readonly baseNumber: number;
  readonly reason: string;
  /** Names this form's sending, so that sending it twice asks once. */
  readonly formKey: string;
  readonly fields: readonly CorrectedField[];
}

/** The numbers that a measurement uses, to be corrected; sending it shows what changes, and changes nothing in the pattern. */
export function CorrectForm({ callId, cell, baseNumber, reason, formKey, fields }: CorrectFormProps) {
  const [failed, send, pending] = useActionState(planCorrection, undefined);
  // React empties a form whose action it calls itself; handed over by hand, what was typed stays.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => send(form));
  };
  return (
    <Sheet>
      <form action={send} onSubmit={onSubmit}>
        <input type="hidden" name="callId" value={callId} />
        <input type="hidden" name="cell" value={cell} />
        <input type="hidden" name="baseNumber" value={baseNumber} />
        <input type="hidden" name="key" value={formKey} />
        <div className="grid gap-x-6 sm:grid-cols-2 lg:grid-cols-3">
          {fields.map((field) => (
            <NumberField key={field.path} field={field} />
          ))}
        </div>
        <Field id="reason" label="What you change and why" hint="It stands beside the new revision.">
          <TextArea
            id="reason"
            name="reason"
            rows={2}
            maxLength={1000}
            defaultValue={reason}
            aria-describedby={describedBy("reason")}
          />
        </Field>
        {failed ? <Notice tone="problem">{failed.says}</Notice> : null}
        <Button type="submit" look="quiet" disabled={pending}>
          Show what changes
        </Button>
      </form>
    </Sheet>
  );
}

/** A number; an allowance's sign is a word beside it, for the number keys of a phone have no minus. */
function NumberField({ field: { path, label, text, way, hint, errors } }: { readonly field: CorrectedField }) {
  return (
    <Field id={path} label={label} hint={hint} errors={errors}>
      <div className="flex gap-2">
        {way === null ? null : (
          <Select
            key={way}
            name={wayField(path)}
            aria-label={`${label}: adds or takes`}
            defaultValue={way}
            className="max-w-26"
          >
            <option value="adds">adds</option>
            <option value="takes">takes</option>
          </Select>
        )}
        <TextInput
          id={path}
          name={path}
          key={text}
          defaultValue={text}
          inputMode="decimal"
          autoComplete="off"
          maxLength={200}
          aria-invalid={errors.length > 0}
          aria-describedby={describedBy(path)}
        />
      </div>
    </Field>
  );
}
