"use client";

import { getInputProps } from "@conform-to/react";
import { DAYS_TO_ANSWER } from "@/features/recruiting/listing/usual-days-computed";
import { Button } from "@/ui/button";
import { describedBy, Field, Select, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { AnswerDaysField } from "./answer-days-field";
import { addTester } from "./progress-actions";

interface AddFormProps {
  readonly callId: string;
  /** Sizewright sends them their link. */
  readonly isMailed: boolean;
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
}

type Fields = Record<"callId" | "name" | "email" | "size" | "days" | "self", string>;

/** Invites somebody who has not applied, or adds the designer as a tester. */
export function AddForm({ callId, isMailed, sizes }: AddFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(addTester, {
    callId,
    days: String(DAYS_TO_ANSWER),
  });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input type="hidden" name="callId" value={callId} />
      <Field id={fields.name.id} label="Name" errors={fields.name.errors}>
        <TextInput
          {...getInputProps(fields.name, { type: "text" })}
          key="name"
          autoComplete="off"
          aria-describedby={describedBy(fields.name.id)}
        />
      </Field>
      <Field
        id={fields.email.id}
        label="E-mail (optional)"
        hint={
          isMailed
            ? "Sizewright sends them their link. Without an address, you copy it and send it yourself."
            : "Sizewright sends no e-mail: you copy the link and send it yourself."
        }
        errors={fields.email.errors}
      >
        <TextInput
          {...getInputProps(fields.email, { type: "email" })}
          key="email"
          autoComplete="off"
          aria-describedby={describedBy(fields.email.id)}
        />
      </Field>
      <Field id={fields.size.id} label="Size" errors={fields.size.errors}>
        <Select
          id={fields.size.id}
          name="size"
          defaultValue={fields.size.initialValue ?? ""}
          aria-describedby={describedBy(fields.size.id)}
          aria-invalid={fields.size.errors ? true : undefined}
        >
          <option value="">Choose a size</option>
          {sizes.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </Select>
      </Field>
      <AnswerDaysField id={fields.days.id} chosen={fields.days.initialValue} errors={fields.days.errors} />
      <label className="mb-5 flex min-h-11 cursor-pointer items-center gap-3">
        <input type="checkbox" name="self" value="on" className="size-5 shrink-0 accent-thread" />
        This is me: I test this size myself and need no invitation
      </label>
      <Button type="submit" disabled={pending}>
        {pending ? "Adding …" : "Add tester"}
      </Button>
    </form>
  );
}
