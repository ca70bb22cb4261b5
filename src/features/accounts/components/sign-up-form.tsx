"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { useActionForm } from "@/ui/use-action-form";
import { signUp } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { PasswordInput } from "./password-input";

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
      <Field id={fields.email.id} label="E-mail" errors={fields.email.errors}>
        <TextInput
          {...getInputProps(fields.email, { type: "email" })}
          key="email"
          autoComplete="username"
          aria-describedby={describedBy(fields.email.id)}
        />
      </Field>
      <Field id={fields.password.id} label="Password" hint={passwordHint} errors={fields.password.errors}>
        <PasswordInput
          {...getInputProps(fields.password, { type: "password", value: false })}
          key="password"
          autoComplete="new-password"
          aria-describedby={describedBy(fields.password.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Creating…" : "Create account"}
      </Button>
    </form>
  );
}
