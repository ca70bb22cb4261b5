"use client";

import { useActionState, useState, useTransition, type FormEvent } from "react";
import { saveListing, type ListingAnswer } from "./listing-actions";

const UNSENT =
  "Not saved, because Sizewright could not be reached. What you typed is still here; check your connection and try again.";

/**
 * The listing's form and its action, with and without JavaScript. React resets a form whose action it calls, and leaves the
 * page if the connection fails; so with JavaScript the action is called here.
 */
export function useListingForm() {
  const [posted, send] = useActionState<ListingAnswer | undefined, FormData>(saveListing, undefined);
  const [handed, setHanded] = useState<ListingAnswer>();
  const [pending, start] = useTransition();
  const answer = handed ?? posted;
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
    const data = new FormData(event.currentTarget, submitter);
    start(async () => setHanded(await saveListing(answer, data).catch(() => unsent(data))));
  };
  return { answer, pending, formProps: { action: send, noValidate: true, onSubmit } };
}

function unsent(data: FormData): ListingAnswer {
  const typed = Object.fromEntries(
    [...data].flatMap(([name, text]) => (typeof text === "string" ? [[name, text]] : [])),
  );
  return { status: "failed", typed, version: Number(data.get("version")), faults: [], theirs: null, message: UNSENT };
}
