"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { useActionForm } from "@/ui/use-action-form";
import { signUp } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { EmailField, NameField, PasswordField } from "./account-fields";

interface SignUpFormProps {
  readonly passwordHint: string;
  /** Where to go after signing up. */
  readonly next: string;
}

type Fields = Record<"name" | "email" | "password" | "next", string>;

export function SignUpForm({ passwordHint, next }: SignUpFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(signUp, { next });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input {...getInputProps(fields.next, { type: "hidden" })} key="next" />
      <NameField field={fields.name} />
      <EmailField field={fields.email} />
      <PasswordField field={fields.password} label="Password" hint={passwordHint} autoComplete="new-password" />
      <Button type="submit" disabled={pending}>
        {pending ? "Creating…" : "Create account"}
      </Button>
    </form>
  );
}
