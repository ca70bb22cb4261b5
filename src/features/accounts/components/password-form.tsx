"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { savePassword } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { PasswordInput } from "./password-input";

interface PasswordFormProps {
  /** Tells password managers whose password this is. */
  readonly email: string;
  readonly passwordHint: string;
}

type Fields = Record<"password" | "newPassword", string>;

export function PasswordForm({ email, passwordHint }: PasswordFormProps) {
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Fields>(savePassword);
  const { password, newPassword } = fields;
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? <Notice tone="done">Your password is changed. You are signed out everywhere else.</Notice> : null}
      <input type="text" hidden readOnly autoComplete="username" defaultValue={email} />
      <Field id={password.id} label="Current password" errors={password.errors}>
        <PasswordInput
          {...getInputProps(password, { type: "password", value: false })}
          key="password"
          autoComplete="current-password"
          aria-describedby={describedBy(password.id)}
        />
      </Field>
      <Field id={newPassword.id} label="New password" hint={passwordHint} errors={newPassword.errors}>
        <PasswordInput
          {...getInputProps(newPassword, { type: "password", value: false })}
          key="newPassword"
          autoComplete="new-password"
          aria-describedby={describedBy(newPassword.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Changing…" : "Change password"}
      </Button>
    </form>
  );
}
