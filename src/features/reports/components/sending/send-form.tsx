"use client";

import { startTransition, useActionState, useEffect, useState, useSyncExternalStore, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { keepReportFields } from "../../draft-actions";
import { sendReportForm } from "../../send-actions";
import type { SendAnswer } from "../../send-answer";
import { AskedFields } from "../keeping/asked-fields";
import { FieldKeeper, UNHEARD } from "../keeping/field-keeper";

interface SendFormProps {
  readonly testerId: string;
  /** The draft's version that stands on this page. */
  readonly version: number;
  readonly label: string;
}

const NOT_CONNECTED: SendAnswer = {
  status: "failed",
  says: "There is no connection just now, so nothing was sent. Send again when you are back: it is stored once.",
};

/** Sends the report; what this device has not handed over yet goes before it. */
export function SendForm({ testerId, version, label }: SendFormProps) {
  const [keeper] = useState(() => new FieldKeeper(testerId, keepReportFields));
  const keeping = useSyncExternalStore(
    keeper.subscribe,
    () => keeper.keeping,
    () => UNHEARD,
  );
  useEffect(() => keeper.start(), [keeper]);
  const [posted, send] = useActionState(sendReportForm, null);
  const [answered, setAnswered] = useState<SendAnswer | null>(null);
  const [isSending, setSending] = useState(false);
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setSending(true);
    startTransition(async () => {
      const answer = await sendReportForm(null, form).catch(() => NOT_CONNECTED);
      startTransition(() => {
        setAnswered(answer);
        setSending(false);
      });
    });
  };
  return (
    <>
      <AskedFields asked={keeping.asked} onChoose={(asked, which) => keeper.choose(asked, which)} />
      <SendSays answer={answered ?? posted} waiting={keeping.waiting} />
      <form action={send} onSubmit={submit}>
        <input type="hidden" name="testerId" value={testerId} />
        <input type="hidden" name="version" value={version} />
        <Button type="submit" disabled={isSending}>
          {isSending ? "Sending …" : label}
        </Button>
      </form>
    </>
  );
}

function SendSays({ answer, waiting }: { readonly answer: SendAnswer | null; readonly waiting: number }) {
  return (
    <>
      {waiting === 0 ? null : (
        <Notice tone="problem" title="Some of it is still on this device alone">
          {waiting === 1 ? "1 field is" : `${waiting} fields are`} not handed over yet, and not in what stands above.
          Wait until you are connected, then send.
        </Notice>
      )}
      {answer === null ? null : answer.status === "sent" ? (
        <Notice tone="done">{`It is sent: version ${answer.version}. Thank you.`}</Notice>
      ) : (
        <Notice tone="problem" title="It was not sent">
          {answer.says}
        </Notice>
      )}
    </>
  );
}
