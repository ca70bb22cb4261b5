"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { PasswordField } from "../components/account-fields";
import { askAddressLink } from "./email-link-actions";

type Fields = Record<"email" | "password", string>;

/** Asks for another address of the account: a link goes there, and only behind it the address changes. */
export function AddressForm() {
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Fields>(askAddressLink);
  const { email, password } = fields;
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? (
        <Notice tone="done" title="Check your mail">
          A message is on its way to the new address. Your address changes once you open its link and confirm.
        </Notice>
      ) : null}
      <Field
        id={email.id}
        label="New e-mail address"
        hint="Tests that you take part in keep the address that you gave there."
        errors={email.errors}
      >
        <TextInput
          {...getInputProps(email, { type: "email" })}
          key="email"
          autoComplete="email"
          aria-describedby={describedBy(email.id)}
        />
      </Field>
      <PasswordField field={password} label="Current password" autoComplete="current-password" />
      <Button type="submit" look="quiet" disabled={pending}>
        {pending ? "Sending…" : "Send link to the new address"}
      </Button>
    </form>
  );
}
