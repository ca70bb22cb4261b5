"use client";

import { getTextareaProps } from "@conform-to/react";
import { AskedFirst } from "@/ui/asked-first";
import { Button } from "@/ui/button";
import { describedBy, Field, TextArea } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { askAbout } from "./asked-actions";
import type { AskedNumber } from "./asked-schema";

interface AskFormProps {
  readonly callId: string;
  readonly testerId: string;
  readonly number: AskedNumber;
  /** Made once for the form. */
  readonly formKey: string;
  /** Names the number for people who hear the page. */
  readonly name: string;
}

interface Fields extends Record<string, unknown> {
  readonly asks: string;
}

/** The designer's question about a number, which arrives at the tester's field. */
export function AskForm({ callId, testerId, number, formKey, name }: AskFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(askAbout);
  const { asks } = fields;
  return (
    <AskedFirst question="Ask about this number" about={name}>
      <p>They read it at this number in their report, and on their first page until they answer.</p>
      <form {...formProps} className="max-w-sm">
        <FormErrors errors={formErrors} />
        {Object.entries({ callId, testerId, formKey, number: JSON.stringify(number) }).map(([field, value]) => (
          <input key={field} type="hidden" name={field} value={value} />
        ))}
        <Field id={asks.id} label="Your question" errors={asks.errors}>
          <TextArea
            {...getTextareaProps(asks)}
            key="asks"
            rows={2}
            dir="auto"
            aria-describedby={describedBy(asks.id)}
          />
        </Field>
        <Button type="submit" look="quiet" disabled={pending}>
          {pending ? "Sending …" : "Ask"}
        </Button>
      </form>
    </AskedFirst>
  );
}
