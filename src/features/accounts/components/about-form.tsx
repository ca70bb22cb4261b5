"use client";

import { Button } from "@/ui/button";
import { describedBy, Field, Select } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { saveAbout } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { NameField } from "./account-fields";

type Fields = Record<"name" | "unit", string>;

export function AboutForm({ name, unit }: { readonly name: string; readonly unit: "cm" | "in" }) {
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Fields>(saveAbout, { name, unit });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? <Notice tone="done">Saved.</Notice> : null}
      <NameField field={fields.name} />
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
