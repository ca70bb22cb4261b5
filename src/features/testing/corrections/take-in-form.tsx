"use client";

import { useActionState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import type { Correction } from "./correction-data";
import { takeInOpen } from "./take-in-actions";

interface TakeInFormProps {
  readonly callId: string;
  /** The newest revision's number. */
  readonly baseNumber: number;
  /** Corrections that no revision has yet, the earliest first. */
  readonly open: readonly Pick<Correction, "correctionId" | "text" | "numbers">[];
}

/** Takes open corrections into the next revision; with and without JavaScript. */
export function TakeInForm({ callId, baseNumber, open }: TakeInFormProps) {
  const [failed, send, isSending] = useActionState(takeInOpen, undefined);
  if (open.length === 0) return null;
  return (
    <form action={send} className="mt-6 max-w-3xl rounded-sheet border border-line-strong px-5 py-4">
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="baseNumber" value={baseNumber} />
      <fieldset>
        <legend className="float-left mb-1 w-full font-semibold">Not in the pattern yet</legend>
        <p className="clear-both text-sm text-soft">
          A new revision gets the right numbers in its grading and in the named passages; what the corrections say
          becomes its list of changes. Other edits that are not saved yet stay as they are.
        </p>
        {open.map(({ correctionId, text, numbers }) => (
          <label key={correctionId} className="flex min-h-11 cursor-pointer items-center gap-2.5 py-1">
            <input
              type="checkbox"
              name="corrections"
              value={correctionId}
              defaultChecked={numbers.length > 0}
              className="size-5 shrink-0 accent-thread"
            />
            <span className="line-clamp-2 min-w-0 wrap-anywhere">
              <bdi>{text}</bdi>
            </span>
          </label>
        ))}
      </fieldset>
      <div className="mt-2 flex flex-wrap gap-2">
        <Button type="submit" name="what" value="revise" disabled={isSending}>
          Save revision {baseNumber + 1} with these
        </Button>
        <Button type="submit" look="quiet" name="what" value="note" disabled={isSending}>
          They are in revision {baseNumber} already
        </Button>
      </div>
      <ActionFailure failed={failed} />
    </form>
  );
}
