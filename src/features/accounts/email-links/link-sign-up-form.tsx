"use client";

import { Button } from "@/ui/button";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { NameField, PasswordField } from "../components/account-fields";
import { signUpByLink } from "./email-link-actions";

interface LinkSignUpFormProps {
  readonly link: string;
  readonly email: string;
  readonly passwordHint: string;
}

type Fields = Record<"link" | "name" | "password", string>;

/** Creates an account behind a mailed link: whoever can read the mailbox chooses the password, and nobody before them. */
export function LinkSignUpForm({ link, email, passwordHint }: LinkSignUpFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(signUpByLink);
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input type="hidden" name="link" value={link} />
      <NameField field={fields.name} />
      <input type="text" hidden readOnly autoComplete="username" defaultValue={email} />
      <PasswordField field={fields.password} label="Password" hint={passwordHint} autoComplete="new-password" />
      <Button type="submit" disabled={pending}>
        {pending ? "Creating…" : "Create account"}
      </Button>
    </form>
  );
}
