"use client";

import { startTransition, useActionState, type FormEvent } from "react";

/**
 * A form of a server action, with and without JavaScript. React empties a form whose action it calls itself; calling the action by hand keeps what was typed.
 *
 * @returns what the action last answered, and what the form is given.
 */
export function useHandedForm<Answer>(
  action: (last: Answer | undefined, form: FormData) => Promise<Answer | undefined>,
) {
  const [answer, send, isSending] = useActionState<Answer | undefined, FormData>(action, undefined);
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
    const form = new FormData(event.currentTarget, submitter);
    startTransition(() => send(form));
  };
  return { answer, isSending, formProps: { action: send, onSubmit } };
}
