"use client";

import { getFormProps, useForm, type SubmissionResult } from "@conform-to/react";
import type { FormEvent } from "react";
import { useHandedForm } from "./use-handed-form";

type FormAction = (last: unknown, form: FormData) => Promise<SubmissionResult>;

/**
 * A form of a server action that answers with faults by field, with and without JavaScript.
 */
export function useActionForm<Fields extends Record<string, unknown>>(
  action: FormAction,
  defaultValue?: Partial<Record<keyof Fields & string, string>>,
) {
  const { answer: last, isSending, formProps } = useHandedForm<SubmissionResult>(action);
  const [form, fields] = useForm<Fields>({ lastResult: last, defaultValue: Object(defaultValue) });
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    form.onSubmit(event);
    if (!event.defaultPrevented) formProps.onSubmit(event);
  };
  return {
    formProps: { ...getFormProps(form), action: formProps.action, noValidate: true, onSubmit },
    formErrors: form.errors,
    fields,
    pending: isSending,
    // An answer that empties the form has no status.
    saved: last !== undefined && last.status !== "error",
  };
}
