"use client";

import { useActionState } from "react";
import { Button } from "@/ui/button";
import { SelectShown } from "@/ui/select-shown";
import { decideOnSeveral } from "./decision-actions";

/** Id of the form of what is done with several applications; their boxes stand in the list. */
export const SEVERAL_APPLICATIONS = "several-applications";

const DECISIONS = [
  { decision: "yes", label: "Accept selected" },
  { decision: "maybe", label: "Maybe" },
  { decision: "no", label: "Decline selected" },
] as const;

/** One decision for all applications that are ticked in the list. */
export function DecideSeveral({ callId }: { readonly callId: string }) {
  const [failed, send, isSending] = useActionState(decideOnSeveral, undefined);
  return (
    <form id={SEVERAL_APPLICATIONS} action={send} className="mb-3">
      <input type="hidden" name="callId" value={callId} />
      <div className="flex flex-wrap items-center gap-x-4 gap-y-2">
        <SelectShown form={SEVERAL_APPLICATIONS} name="applicationId" />
        {DECISIONS.map(({ decision, label }) => (
          <Button key={decision} type="submit" name="decision" value={decision} look="quiet" disabled={isSending}>
            {label}
          </Button>
        ))}
      </div>
      {failed ? (
        <p role="alert" className="mt-2 text-sm font-semibold text-thread">
          ▲ {failed.says}
        </p>
      ) : null}
    </form>
  );
}
