"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, Select, TextInput } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { saveAbout } from "../actions";
import { FormErrors } from "@/ui/form-errors";

type Fields = Record<"name" | "unit", string>;

export function AboutForm({ name, unit }: { readonly name: string; readonly unit: "cm" | "in" }) {
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Fields>(saveAbout, { name, unit });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? <Notice tone="done">Saved.</Notice> : null}
      <Field
        id={fields.name.id}
        label="Name"
        hint="Your helpers and testers see this name."
        errors={fields.name.errors}
      >
        <TextInput
          {...getInputProps(fields.name, { type: "text" })}
          key="name"
          autoComplete="name"
          aria-describedby={describedBy(fields.name.id)}
        />
      </Field>
      <Field
        id={fields.unit.id}
        label="Units"
        hint="The unit for lengths that you see and enter."
        errors={fields.unit.errors}
      >
        <Select
          id={fields.unit.id}
          name={fields.unit.name}
          defaultValue={fields.unit.initialValue}
          aria-describedby={describedBy(fields.unit.id)}
        >
          <option value="cm">centimetres</option>
          <option value="in">inches</option>
        </Select>
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Saving…" : "Save"}
      </Button>
    </form>
  );
}
