"use client";

import { useActionState } from "react";
import type { Failure } from "@/server/action";
import { ActionFailure } from "@/ui/action-failure";
import { Button, type ButtonLook } from "@/ui/button";
import { useBrowserZone } from "@/ui/use-browser-zone";
import { addListing, openNewCall } from "./listing-actions";

/** Creates a call for a pattern. @param formKey identifies this form, so that sending it twice creates one call. */
export function NewCall({
  patternId,
  formKey,
  look = "quiet",
}: {
  readonly patternId: string;
  readonly formKey: string;
  readonly look?: ButtonLook;
}) {
  return <CreateForm action={openNewCall} sends={{ patternId, formKey }} button="New test" look={look} />;
}

/** Creates a listing for a call that has none. */
export function CreateListing({ callId }: { readonly callId: string }) {
  return <CreateForm action={addListing} sends={{ callId }} button="Write a listing" />;
}

interface CreateFormProps {
  readonly action: (last: Failure | undefined, form: FormData) => Promise<Failure | undefined>;
  readonly sends: Readonly<Record<string, string>>;
  readonly button: string;
  readonly look?: ButtonLook;
}

/** Sends the browser’s time zone along, if scripts run. */
function CreateForm({ action, sends, button, look }: CreateFormProps) {
  const [failed, send, pending] = useActionState(action, undefined);
  const timeZone = useBrowserZone() ?? "";
  return (
    <form action={send}>
      {Object.entries({ ...sends, timeZone }).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <Button type="submit" look={look} disabled={pending}>
        {pending ? "One moment …" : button}
      </Button>
      <ActionFailure failed={failed} />
    </form>
  );
}
