"use client";

import { useActionState, useState, useTransition, type FormEvent } from "react";
import { saveOpening, type OpeningAnswer } from "../actions";

const UNSENT = "This did not reach Sizewright. What you typed is still here; check the connection and try again.";

/**
 * The opening's form behind its action, with and without JavaScript. React empties a form whose action it calls itself, and
 * leaves the page where the connection fails; so with JavaScript the form is handed over by hand.
 */
export function useOpeningForm() {
  const [posted, send] = useActionState<OpeningAnswer | undefined, FormData>(saveOpening, undefined);
  const [handed, setHanded] = useState<OpeningAnswer>();
  const [pending, start] = useTransition();
  const answer = handed ?? posted;
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
    const data = new FormData(event.currentTarget, submitter);
    start(async () => setHanded(await saveOpening(answer, data).catch(() => unsent(data))));
  };
  return { answer, pending, formProps: { action: send, noValidate: true, onSubmit } };
}

function unsent(data: FormData): OpeningAnswer {
  const typed = Object.fromEntries(
    [...data].flatMap(([name, text]) => (typeof text === "string" ? [[name, text]] : [])),
  );
  return { status: "failed", typed, version: Number(data.get("version")), faults: [], theirs: null, says: UNSENT };
}
