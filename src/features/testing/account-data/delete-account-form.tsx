"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { deleteByPassword } from "./deletion-actions";

type Fields = Record<"password", string>;

/** Asks for the password again, and deletes the account. */
export function DeleteAccountForm() {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(deleteByPassword);
  const { password } = fields;
  return (
    <form {...formProps} className="max-w-md">
      <FormErrors errors={formErrors} />
      <Field id={password.id} label="Your password" errors={password.errors}>
        <TextInput
          {...getInputProps(password, { type: "password", value: false })}
          key="password"
          autoComplete="current-password"
          aria-describedby={describedBy(password.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Deleting …" : "Delete my account"}
      </Button>
    </form>
  );
}
