"use client";

import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { savePassword } from "../actions";
import { FormErrors } from "@/ui/form-errors";
import { KnownAddress, PasswordField } from "./account-fields";

interface PasswordFormProps {
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
      <KnownAddress email={email} />
      <PasswordField field={password} label="Current password" autoComplete="current-password" />
      <PasswordField field={newPassword} label="New password" hint={passwordHint} autoComplete="new-password" />
      <Button type="submit" disabled={pending}>
        {pending ? "Changing…" : "Change password"}
      </Button>
    </form>
  );
}
