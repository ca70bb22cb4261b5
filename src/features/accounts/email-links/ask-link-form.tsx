"use client";

import { getInputProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { FormErrors } from "@/ui/form-errors";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { EmailField } from "../components/account-fields";
import { askSignInLink, askSignUpLink } from "./email-link-actions";

interface AskLinkFormProps {
  readonly asksTo: "sign-in" | "sign-up";
  readonly email?: string;
  /** Where to go then. */
  readonly next?: string;
}

type Fields = Record<"email" | "next", string>;

const SENT = {
  "sign-in": "If there is an account with this address, a link is on its way. It works once, for one hour.",
  "sign-up": "A link is on its way to this address. It works once, for one hour.",
};

/** Asks for a link by e-mail. */
export function AskLinkForm({ asksTo, email = "", next = "/" }: AskLinkFormProps) {
  const action = asksTo === "sign-in" ? askSignInLink : askSignUpLink;
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Fields>(action, { email, next });
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? (
        <Notice tone="done" title="Check your mail">
          {SENT[asksTo]} If nothing comes within a few minutes, look in your spam folder.
        </Notice>
      ) : null}
      <input {...getInputProps(fields.next, { type: "hidden" })} key="next" />
      <EmailField field={fields.email} />
      <Button type="submit" disabled={pending}>
        {pending ? "Sending…" : "Send link"}
      </Button>
    </form>
  );
}
