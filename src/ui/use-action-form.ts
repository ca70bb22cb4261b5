"use client";

import { getFormProps, useForm, type SubmissionResult } from "@conform-to/react";
import { startTransition, useActionState, type FormEvent } from "react";

type FormAction = (last: unknown, form: FormData) => Promise<SubmissionResult>;

/**
 * A form of a server action that answers with faults by field, with and without JavaScript. React empties a form whose action it calls itself, so the action is called by hand and what was typed stays.
 */
export function useActionForm<Fields extends Record<string, unknown>>(
  action: FormAction,
  defaultValue?: Partial<Record<keyof Fields & string, string>>,
) {
  const [last, send, pending] = useActionState<SubmissionResult | undefined, FormData>(action, undefined);
  const [form, fields] = useForm<Fields>({ lastResult: last, defaultValue: Object(defaultValue) });
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    form.onSubmit(event);
    if (event.defaultPrevented) return;
    event.preventDefault();
    const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
    const data = new FormData(event.currentTarget, submitter);
    startTransition(() => send(data));
  };
  return {
    formProps: { ...getFormProps(form), action: send, noValidate: true, onSubmit },
    formErrors: form.errors,
    fields,
    pending,
    // An answer that empties the form has no status.
    saved: last !== undefined && last.status !== "error",
  };
}
