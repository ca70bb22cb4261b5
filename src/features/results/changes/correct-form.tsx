"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { wayField } from "@/features/patterns/schema";
import { Button } from "@/ui/button";
import { describedBy, Field, Select, TextArea, TextInput } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { Sheet } from "@/ui/sheet";
import { planCorrection } from "./plan-actions";
import type { CorrectedField } from "./correction";

interface CorrectFormProps {
  readonly callId: string;
  readonly cell: string;
  readonly baseNumber: number;
  readonly reason: string;
  /** Idempotency key: sending the form twice makes one plan. */
  readonly formKey: string;
  readonly fields: readonly CorrectedField[];
}

/** The numbers that a measurement uses, to correct; sending shows what changes and saves nothing. */
export function CorrectForm({ callId, cell, baseNumber, reason, formKey, fields }: CorrectFormProps) {
  const [failed, send, pending] = useActionState(planCorrection, undefined);
  // React empties a form whose action it calls itself; calling the action by hand keeps what was typed.
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
        <Field id="reason" label="What you change and why" hint="Shown with the new revision.">
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

/** A number; the sign of an edging or seam is a word beside it, because a phone's number keys have no minus. */
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
