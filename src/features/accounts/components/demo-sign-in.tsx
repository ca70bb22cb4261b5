"use client";

import { Button } from "@/ui/button";
import { Sheet } from "@/ui/sheet";
import { useActionForm } from "@/ui/use-action-form";
import { signIn } from "../actions";
import { DEMO_ACCOUNT } from "../demo-account";
import { FormErrors } from "@/ui/form-errors";

type Fields = Record<"email" | "password" | "next", string>;

/** Sign-in of the demo, only on its sign-in page. */
export function DemoSignIn({ next }: { readonly next: string }) {
  const { formProps, formErrors, pending } = useActionForm<Fields>(signIn);
  const { email, password, name } = DEMO_ACCOUNT;
  return (
    <Sheet className="mb-10">
      <form {...formProps}>
        <h2 className="mb-2">Explore the demo</h2>
        <p className="mb-4 text-soft">
          {name} has a pattern in nine sizes, a test that is reported and one that is under way, all invented. To sign
          in yourself: {email}, password {password}.
        </p>
        <FormErrors errors={formErrors} />
        <input type="hidden" name="email" value={email} />
        <input type="hidden" name="password" value={password} />
        <input type="hidden" name="next" value={next} />
        <Button type="submit" disabled={pending}>
          {pending ? "Signing in…" : "Sign in to the demo"}
        </Button>
      </form>
    </Sheet>
  );
}
