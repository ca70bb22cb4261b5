"use client";

import { startTransition, useActionState, useEffect, useRef, useState, type FormEvent } from "react";
import { Button } from "@/ui/button";
import { apply } from "../../actions";
import {
  typedText,
  type ApplyAnswer,
  type AskedOfApplicants,
  type NotTakingWhy,
  type TypedApplication,
} from "../../apply-form";
import { keptKey } from "../../kept-key";
import { AnswerSummary } from "./answer-summary";
import { ApplyFields } from "./apply-fields";
import { KeptNotice } from "./kept-notice";
import { NotTaking } from "./not-taking";
import { TypedBack } from "./typed-back";
import { useKeptForm } from "./use-kept-form";

interface ApplyFormProps {
  readonly callId: string;
  readonly designer: string;
  readonly craft: "crochet" | "knitting";
  /** Null where the call was taken back while she typed. */
  readonly asked: AskedOfApplicants | null;
  /** Why she cannot apply now; null where she can. */
  readonly notTaking: NotTakingWhy | null;
  /** Made once for the form: sending it twice stores it once. */
  readonly formKey: string;
  /** What is filled in already. */
  readonly prefilled: TypedApplication;
}

/** Of what is typed, all that is not a yes of hers. */
const NOT_KEPT = ["agrees", "adult", "agreementVersion", "callId", "timeZone"];

/** The application's form: nothing typed is lost, whatever comes back. */
export function ApplyForm({ callId, designer, craft, asked, notTaking, prefilled, ...first }: ApplyFormProps) {
  const [answer, send, isSending] = useActionState(apply, null);
  const [formKey, setFormKey] = useState(first.formKey);
  const form = useRef<HTMLFormElement>(null);
  const summary = useRef<HTMLDivElement>(null);
  const { isKept, keep, forget } = useKeptForm({
    form,
    storageKey: keptKey(callId),
    without: NOT_KEPT,
    // Sent, and the answer lost on the way: the same key finds what is stored.
    onRestored: (kept) => setFormKey(kept.formKey?.[0] ?? first.formKey),
  });
  useEffect(() => {
    if (answer !== null) summary.current?.focus();
  }, [answer]);
  // React empties a form whose action it calls itself; handed over by hand, what was typed stays.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    data.set("timeZone", Intl.DateTimeFormat().resolvedOptions().timeZone);
    startTransition(() => send(data));
  };
  if (notTaking !== null && answer === null) return <NotTaking reason={notTaking} callId={callId} />;
  const typed = answer?.typed ?? prefilled;
  if (asked === null) return <GoneForm answer={answer} />;
  const answered = { typed, faults: answer?.faults ?? {}, doubts: answer?.doubts ?? {} };
  return (
    <form ref={form} action={send} onSubmit={onSubmit} onChange={keep} noValidate>
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="formKey" value={typedText(answer?.typed, "formKey") || formKey} />
      <div ref={summary} tabIndex={-1}>
        {answer === null ? null : <AnswerSummary answer={answer} body={asked.body} />}
      </div>
      <KeptNotice isKept={isKept} onForget={forget} />
      <ApplyFields
        asked={{ ...asked, agreement: answer?.agreement ?? asked.agreement }}
        {...{ answered, craft, designer }}
      />
      <Button type="submit" disabled={isSending}>
        {isSending ? "Sending …" : "Send the application"}
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
