"use client";

import { useActionState } from "react";
import type { Failure } from "@/server/action";
import { Button, type ButtonLook } from "@/ui/button";
import { useBrowserZone } from "@/ui/use-browser-zone";
import { beginCallOpening, openNewCall } from "../actions";

/** Makes a new call of a pattern. @param formKey names this form’s sending, so that sending it twice makes one call. */
export function OpenCall({ patternId, formKey }: { readonly patternId: string; readonly formKey: string }) {
  return <BeginForm action={openNewCall} sends={{ patternId, formKey }} button="Open a call" look="quiet" />;
}

/** Begins an opening for a call that has none. */
export function BeginOpening({ callId }: { readonly callId: string }) {
  return <BeginForm action={beginCallOpening} sends={{ callId }} button="Begin an opening" />;
}

interface BeginFormProps {
  readonly action: (last: Failure | undefined, form: FormData) => Promise<Failure | undefined>;
  readonly sends: Readonly<Record<string, string>>;
  readonly button: string;
  readonly look?: ButtonLook;
}

/** Sends her browser’s time zone along, where scripts run. */
function BeginForm({ action, sends, button, look }: BeginFormProps) {
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
      {failed ? (
        <p role="alert" className="mt-2 text-sm font-semibold text-thread">
          ▲ {failed.says}
        </p>
      ) : null}
    </form>
  );
}
