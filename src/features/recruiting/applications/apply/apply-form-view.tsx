"use client";

import { startTransition, useActionState, useEffect, useRef, useState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { apply } from "./apply-actions";
import {
  typedText,
  type ApplyAnswer,
  type AskedOfApplicants,
  type NotTakingWhy,
  type TypedApplication,
} from "./apply-answer";
import { storageKeyOf } from "./storage-key";
import { AnswerSummary } from "./answer-summary";
import { ApplyFields } from "./apply-fields";
import { StoredNotice } from "./stored-notice";
import { NotTaking } from "./not-taking";
import { TypedBack } from "./typed-back";
import { useStoredForm } from "./use-stored-form";

interface ApplyFormProps {
  readonly callId: string;
  readonly designer: string;
  readonly craft: "crochet" | "knitting";
  /** Null if the call was unpublished in the meantime. */
  readonly asked: AskedOfApplicants | null;
  /** Why nobody, or this person, can apply now; null if they can. */
  readonly notTaking: NotTakingWhy | null;
  /** Made once for the form, so that sending it twice stores it once. */
  readonly formKey: string;
  /** Initial values. */
  readonly prefilled: TypedApplication;
}

const NONE = {};

/** Fields that are not stored on the device: consent must be given again. */
const NOT_STORED = ["agrees", "adult", "agreementVersion", "callId", "timeZone"];

/** The application form: nothing typed is lost, whatever the answer. */
export function ApplyFormView({ callId, designer, craft, asked, notTaking, prefilled, ...first }: ApplyFormProps) {
  const [answer, send, isSending] = useActionState(apply, null);
  const [formKey, setFormKey] = useState(first.formKey);
  const form = useRef<HTMLFormElement>(null);
  const summary = useRef<HTMLDivElement>(null);
  const { isStored, store, discard } = useStoredForm({
    form,
    storageKey: storageKeyOf(callId),
    without: NOT_STORED,
    // If it was sent and the answer was lost, the same key finds the stored application.
    onRestored: (stored) => setFormKey(stored.formKey?.[0] ?? first.formKey),
  });
  useEffect(() => {
    if (answer !== null) summary.current?.focus();
  }, [answer]);
  // React resets a form whose action it calls; calling the action here keeps what was typed.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    data.set("timeZone", Intl.DateTimeFormat().resolvedOptions().timeZone);
    startTransition(() => send(data));
  };
  if (notTaking !== null && answer === null) return <NotTaking reason={notTaking} callId={callId} />;
  const typed = answer?.typed ?? prefilled;
  if (asked === null) return <GoneForm answer={answer} />;
  const answered = { typed, faults: answer?.faults ?? NONE, doubts: answer?.doubts ?? NONE };
  return (
    <form ref={form} action={send} onSubmit={onSubmit} onChange={store} noValidate>
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="formKey" value={typedText(answer?.typed, "formKey") || formKey} />
      <div ref={summary} tabIndex={-1}>
        {answer === null ? null : <AnswerSummary answer={answer} body={asked.body} />}
      </div>
      <StoredNotice isStored={isStored} onDiscard={discard} />
      <ApplyFields
        asked={{ ...asked, agreement: answer?.agreement ?? asked.agreement }}
        {...{ callId, answered, craft, designer }}
      />
      <Button type="submit" disabled={isSending}>
        {isSending ? "Sending …" : "Send application"}
      </Button>
    </form>
  );
}

function GoneForm({ answer }: { readonly answer: ApplyAnswer | null }) {
  if (answer === null) return <NotTaking reason={{ why: "gone" }} callId="" />;
  return (
    <>
      <AnswerSummary answer={answer} body={[]} />
      <TypedBack typed={answer.typed} />
    </>
  );
}
