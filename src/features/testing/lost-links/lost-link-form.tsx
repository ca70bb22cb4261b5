"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { askOwnLinks } from "./lost-link-actions";

/** Asks for the links of an address. */
export function LostLinkForm() {
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Record<"email", string>>(askOwnLinks);
  const { email } = fields;
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? (
        <Notice tone="done" title="Check your mail">
          If there is a test or an application with this address, a message with its links is on its way. If nothing
          comes within a few minutes, look in your spam folder, or ask the designer of the test.
        </Notice>
      ) : null}
      <Field id={email.id} label="E-mail" errors={email.errors}>
        <TextInput
          {...getInputProps(email, { type: "email" })}
          key="email"
          autoComplete="email"
          aria-describedby={describedBy(email.id)}
        />
      </Field>
      <Button type="submit" disabled={pending}>
        {pending ? "Sending…" : "Send my links"}
      </Button>
    </form>
  );
}
