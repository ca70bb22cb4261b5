"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { useActionForm } from "@/ui/use-action-form";
import { signIn } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { EmailField, PasswordField } from "./account-fields";

interface SignInFormProps {
  readonly email: string;
  /** Where to go then. */
  readonly next: string;
}

type Fields = Record<"email" | "password" | "next", string>;

export function SignInForm({ email, next }: SignInFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(signIn, { email, next });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input {...getInputProps(fields.next, { type: "hidden" })} key="next" />
      <EmailField field={fields.email} />
      <PasswordField field={fields.password} label="Password" autoComplete="current-password" />
      <Button type="submit" disabled={pending}>
        {pending ? "Signing in…" : "Sign in"}
      </Button>
    </form>
  );
}
