import type { ReactNode } from "react";
import { ActionFailure } from "./action-failure";
import { SelectShown } from "./select-shown";

interface SeveralBarProps {
  /** Id of the form, to which the boxes in the list belong. */
  readonly form: string;
  /** Name of the boxes. */
  readonly boxes: string;
  readonly callId: string;
  /** What the form does unless a button says otherwise: an action, or the address of a page that takes what is ticked. */
  readonly action: string | ((form: FormData) => void);
  readonly failed: { readonly says: string } | undefined;
  /** Buttons. */
  readonly children: ReactNode;
}

/** Above a list: what is done with all that are ticked in it. */
export function SeveralBar({ form, boxes, callId, action, failed, children }: SeveralBarProps) {
  return (
    <form id={form} action={action} {...(typeof action === "string" ? { method: "get" } : {})} className="mb-3">
      <input type="hidden" name="callId" value={callId} />
      <div className="flex flex-wrap items-center gap-x-4 gap-y-2">
        <SelectShown form={form} name={boxes} />
        {children}
      </div>
      <ActionFailure failed={failed} />
    </form>
  );
}
