"use client";

import type { ReactNode } from "react";
import { Button } from "@/ui/button";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { KnownAddress, NameField, PasswordField } from "../components/account-fields";
import { changeAddressByLink, setPasswordByLink, signInByLink, signUpByLink } from "./email-link-actions";

interface PasswordByLinkProps {
  readonly link: string;
  readonly email: string;
  readonly passwordHint: string;
}

/** The one button of a mailed link. */
export function LinkSignInForm({ link, button }: { readonly link: string; readonly button: string }) {
  const form = useActionForm<Record<"link", string>>(signInByLink);
  return (
    <div className="mb-10">
      <LinkForm {...{ link, form, button }} waiting="One moment…" />
    </div>
  );
}

/** Gives the account the address that the link was mailed to. */
export function LinkAddressForm({ link }: { readonly link: string }) {
  const form = useActionForm<Record<"link", string>>(changeAddressByLink);
  return <LinkForm {...{ link, form }} button="Use this address" waiting="Changing it…" />;
}

/** Chooses a new password by a mailed link. */
export function LinkPasswordForm({ link, email, passwordHint }: PasswordByLinkProps) {
  const form = useActionForm<Record<"link" | "newPassword", string>>(setPasswordByLink);
  const { newPassword } = form.fields;
  return (
    <LinkForm {...{ link, form }} button="Set password and sign in" waiting="Setting it…">
      <KnownAddress email={email} />
      <PasswordField field={newPassword} label="New password" hint={passwordHint} autoComplete="new-password" />
    </LinkForm>
  );
}

/** Creates an account behind a mailed link: whoever can read the mailbox chooses the password, and nobody before them. */
export function LinkSignUpForm({ link, email, passwordHint }: PasswordByLinkProps) {
  const form = useActionForm<Record<"link" | "name" | "password", string>>(signUpByLink);
  const { name, password } = form.fields;
  return (
    <LinkForm {...{ link, form }} button="Create account" waiting="Creating…">
      <NameField field={name} />
      <KnownAddress email={email} />
      <PasswordField field={password} label="Password" hint={passwordHint} autoComplete="new-password" />
    </LinkForm>
  );
}

interface LinkFormProps {
  readonly link: string;
  readonly form: Pick<ReturnType<typeof useActionForm>, "formProps" | "formErrors" | "pending">;
  readonly button: string;
  readonly waiting: string;
  /** What is entered. */
  readonly children?: ReactNode;
}

function LinkForm({ link, form: { formProps, formErrors, pending }, button, waiting, children }: LinkFormProps) {
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input type="hidden" name="link" value={link} />
      {children}
      <Button type="submit" disabled={pending}>
        {pending ? waiting : button}
      </Button>
    </form>
  );
}
