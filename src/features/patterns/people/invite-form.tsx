"use client";

import { startTransition, useActionState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import type { HelperRole } from "../access";
import { invite } from "./invitation-actions";
import { NewLink } from "./new-link";
import { HELPER_MAY, ROLE_WORDS } from "./role-copy";

const ROLES: readonly HelperRole[] = ["viewer", "editor"];

/** Creates a link for one helper, and shows it once. */
export function InviteForm({ patternId }: { readonly patternId: string }) {
  const [last, send, isSending] = useActionState(invite, undefined);
  const refused = last?.status === "refused" ? last : null;
  // React empties a form whose action it calls itself; calling the action by hand keeps what was typed until a link is created.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => send(form));
  };
  return (
    <>
      <div aria-live="polite">{last?.status === "made" ? <NewLink key={last.link} {...last} /> : null}</div>
      <form key={last?.status === "made" ? last.link : "first"} action={send} onSubmit={onSubmit}>
        <input type="hidden" name="patternId" value={patternId} />
        <fieldset className="mb-5">
          <legend className="mb-1 font-semibold">Role</legend>
          {ROLES.map((role) => (
            <label key={role} className="flex min-h-11 cursor-pointer gap-3 py-1.5">
              <input
                type="radio"
                name="role"
                value={role}
                defaultChecked={role === (refused?.role ?? "viewer")}
                className="mt-1 size-5 shrink-0 accent-thread"
              />
              <span>
                <span className="font-semibold">{ROLE_WORDS[role]}</span>
                <span className="block text-sm text-soft">They can {HELPER_MAY[role]}.</span>
              </span>
            </label>
          ))}
        </fieldset>
        <Field
          id="invitation-note"
          label="Note (optional)"
          hint="For yourself, to tell your links apart. The person who opens the link does not see it."
          errors={refused ? [refused.says] : undefined}
        >
          <TextInput
            id="invitation-note"
            name="note"
            defaultValue={refused?.note}
            autoComplete="off"
            aria-describedby={describedBy("invitation-note")}
            aria-invalid={refused ? true : undefined}
          />
        </Field>
        <Button type="submit" disabled={isSending}>
          {isSending ? "Creating the link …" : "Create link"}
        </Button>
      </form>
    </>
  );
}
