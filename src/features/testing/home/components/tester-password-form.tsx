"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { setPassword } from "../password-actions";

interface TesterPasswordFormProps {
  readonly testerId: string;
  readonly name: string;
  readonly email: string;
  readonly passwordHint: string;
}

type Fields = Record<"testerId" | "name" | "email" | "password", string>;

/** Creates an account for a tester; name and e-mail are filled in from what the designer entered. */
export function TesterPasswordForm({ testerId, name, email, passwordHint }: TesterPasswordFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(setPassword, { testerId, name, email });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input {...getInputProps(fields.testerId, { type: "hidden" })} key="testerId" />
      <Field id={fields.name.id} label="Name" errors={fields.name.errors}>
        <TextInput
          {...getInputProps(fields.name, { type: "text" })}
          key="name"
          autoComplete="name"
          aria-describedby={describedBy(fields.name.id)}
        />
      </Field>
      <Field id={fields.email.id} label="E-mail" hint="You will sign in with it." errors={fields.email.errors}>
        <TextInput
          {...getInputProps(fields.email, { type: "email" })}
          key="email"
          autoComplete="username"
          aria-describedby={describedBy(fields.email.id)}
        />
      </Field>
      <Field id={fields.password.id} label="Password" hint={passwordHint} errors={fields.password.errors}>
        <TextInput
          {...getInputProps(fields.password, { type: "password", value: false })}
          key="password"
          autoComplete="new-password"
          aria-describedby={describedBy(fields.password.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Setting it …" : "Set password"}
      </Button>
    </form>
  );
}
