"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { deleteForGood } from "./pattern-deletion-actions";

type Fields = Record<"patternId" | "name", string>;

/** Asks for the pattern's name, and deletes the pattern. */
export function PatternDeletionForm({ patternId }: { readonly patternId: string }) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(deleteForGood);
  const { name } = fields;
  return (
    <form {...formProps} className="max-w-md">
      <FormErrors errors={formErrors} />
      <input type="hidden" name={fields.patternId.name} value={patternId} />
      <Field id={name.id} label="Type the pattern’s name to confirm" errors={name.errors}>
        <TextInput
          {...getInputProps(name, { type: "text" })}
          key="name"
          autoComplete="off"
          aria-describedby={describedBy(name.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Deleting …" : "Delete this pattern"}
      </Button>
    </form>
  );
}
