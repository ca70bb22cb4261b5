"use client";

import { Button } from "@/ui/button";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { signInByLink } from "./email-link-actions";

/** The one button of a mailed link. */
export function LinkSignInForm({ link, button }: { readonly link: string; readonly button: string }) {
  const { formProps, formErrors, pending } = useActionForm<Record<"link", string>>(signInByLink);
  return (
    <form {...formProps} className="mb-10">
      <FormErrors errors={formErrors} />
      <input type="hidden" name="link" value={link} />
      <Button type="submit" disabled={pending}>
        {pending ? "One moment…" : button}
      </Button>
    </form>
  );
}
