"use client";

import { Button } from "@/ui/button";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { PasswordField } from "../components/account-fields";
import { setPasswordByLink } from "./email-link-actions";

interface LinkPasswordFormProps {
  readonly link: string;
  /** Tells password managers whose password this is. */
  readonly email: string;
  readonly passwordHint: string;
}

type Fields = Record<"link" | "newPassword", string>;

/** Chooses a new password by a mailed link. */
export function LinkPasswordForm({ link, email, passwordHint }: LinkPasswordFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(setPasswordByLink);
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input type="hidden" name="link" value={link} />
      <input type="text" hidden readOnly autoComplete="username" defaultValue={email} />
      <PasswordField field={fields.newPassword} label="New password" hint={passwordHint} autoComplete="new-password" />
      <Button type="submit" disabled={pending}>
        {pending ? "Setting it…" : "Set password and sign in"}
      </Button>
    </form>
  );
}
