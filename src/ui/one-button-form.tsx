"use client";

import { useActionState } from "react";
import { ActionFailure } from "./action-failure";
import { Button, type ButtonLook } from "./button";

/** The failure as a sentence. */
interface Failed {
  readonly status: "failed";
  readonly says: string;
}

interface OneButtonFormProps {
  readonly action: (last: Failed | undefined, form: FormData) => Promise<Failed | undefined>;
  readonly sends: Readonly<Record<string, string>>;
  readonly button: string;
  /** Label while it is being sent. */
  readonly waiting: string;
  /** What it is about, for screen readers: one button of many. */
  readonly about?: string;
  readonly look?: ButtonLook;
}

/** Sends fixed values; a failure is shown beside the button. Works without scripts too. */
export function OneButtonForm({ action, sends, button, waiting, about, look = "quiet" }: OneButtonFormProps) {
  const [failed, send, isSending] = useActionState(action, undefined);
  return (
    <form action={send}>
      {Object.entries(sends).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <Button type="submit" look={look} disabled={isSending}>
        {isSending ? waiting : button}
        {about ? <span className="sr-only">: {about}</span> : null}
      </Button>
      <ActionFailure failed={failed} />
    </form>
  );
}
