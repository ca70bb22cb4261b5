"use client";

import {
  startTransition,
  useActionState,
  useEffect,
  useState,
  useSyncExternalStore,
  type FormEvent,
  type ReactNode,
} from "react";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { saveReportFields } from "../draft-actions";
import type { SendAnswer } from "./send-answer";
import { AskedFields } from "../autosave/asked-fields";
import { FieldAutosave, IDLE } from "../autosave/field-autosave";

interface SendFormProps {
  readonly testerId: string;
  /** The version of the draft that this page shows. */
  readonly version: number;
  readonly label: string;
  readonly action: (last: unknown, form: FormData) => Promise<SendAnswer>;
  /** Further fields. */
  readonly children?: ReactNode;
}

const NOT_CONNECTED: SendAnswer = {
  status: "failed",
  message:
    "There is no connection right now, so nothing was sent. Send again when you are back online; sending twice does no harm.",
};

/** Sends the report, after any changes that this device has not saved yet. */
export function SendForm({ testerId, version, label, action, children }: SendFormProps) {
  const [autosave] = useState(() => new FieldAutosave(testerId, saveReportFields));
  const status = useSyncExternalStore(
    autosave.subscribe,
    () => autosave.status,
    () => IDLE,
  );
  useEffect(() => autosave.start(), [autosave]);
  const [posted, send] = useActionState<SendAnswer | null, FormData>(action, null);
  const [answered, setAnswered] = useState<SendAnswer | null>(null);
  const [isSending, setSending] = useState(false);
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setSending(true);
    startTransition(async () => {
      const answer = await action(null, form).catch(() => NOT_CONNECTED);
      startTransition(() => {
        setAnswered(answer);
        setSending(false);
      });
    });
  };
  return (
    <>
      <AskedFields asked={status.asked} onChoose={(asked, which) => autosave.choose(asked, which)} />
      <SendStatus answer={answered ?? posted} waiting={status.waiting} />
      <form action={send} onSubmit={submit}>
        <input type="hidden" name="testerId" value={testerId} />
        <input type="hidden" name="version" value={version} />
        {children}
        <Button type="submit" disabled={isSending}>
          {isSending ? "Sending …" : label}
        </Button>
      </form>
    </>
  );
}

function SendStatus({ answer, waiting }: { readonly answer: SendAnswer | null; readonly waiting: number }) {
  return (
    <>
      {waiting === 0 ? null : (
        <Notice tone="problem" title="Some changes are only on this device">
          {waiting === 1 ? "1 field is" : `${waiting} fields are`} not saved yet and not part of the report above. Wait
          until you are online, then send.
        </Notice>
      )}
      {answer === null ? null : answer.status === "sent" ? (
        <Notice tone="done">{`Your report is sent, version ${answer.version}. Thank you.`}</Notice>
      ) : (
        <Notice tone="problem" title="Your report was not sent">
          {answer.message}
        </Notice>
      )}
    </>
  );
}
