"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { useActionForm } from "@/ui/use-action-form";
import { signIn } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { PasswordInput } from "./password-input";

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
      <Field id={fields.email.id} label="E-mail" errors={fields.email.errors}>
        <TextInput
          {...getInputProps(fields.email, { type: "email" })}
          key="email"
          autoComplete="username"
          aria-describedby={describedBy(fields.email.id)}
        />
      </Field>
      <Field id={fields.password.id} label="Password" errors={fields.password.errors}>
        <PasswordInput
          {...getInputProps(fields.password, { type: "password", value: false })}
          key="password"
          autoComplete="current-password"
          aria-describedby={describedBy(fields.password.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Signing in…" : "Sign in"}
      </Button>
    </form>
  );
}
