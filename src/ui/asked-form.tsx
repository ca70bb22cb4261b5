"use client";

import type { ReactNode } from "react";
import { AskedFirst } from "./asked-first";
import { Button } from "./button";
import { FormErrors } from "./form-errors";
import { useActionForm } from "./use-action-form";

type ActionForm<Fields extends Record<string, unknown>> = ReturnType<typeof useActionForm<Fields>>;

interface AskedFormProps<Fields extends Record<string, unknown>> {
  readonly question: string;
  /** What it is about, for people who hear the page. */
  readonly about: string;
  /** What follows from it. */
  readonly intro: string;
  readonly action: Parameters<typeof useActionForm>[0];
  /** Fixed values. */
  readonly sends: Readonly<Record<string, string | number>>;
  readonly button: string;
  /** Label while it is being sent. */
  readonly waiting: string;
  readonly children: (fields: ActionForm<Fields>["fields"]) => ReactNode;
}

/** A short form that stands behind a question: opening it shows what follows, and the fields. */
export function AskedForm<Fields extends Record<string, unknown>>(props: AskedFormProps<Fields>) {
  const { question, about, intro, action, sends, button, waiting, children } = props;
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(action);
  return (
    <AskedFirst question={question} about={about}>
      <p>{intro}</p>
      <form {...formProps} className="max-w-sm">
        <FormErrors errors={formErrors} />
        {Object.entries(sends).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        {children(fields)}
        <Button type="submit" look="quiet" disabled={pending}>
          {pending ? waiting : button}
        </Button>
      </form>
    </AskedFirst>
  );
}
