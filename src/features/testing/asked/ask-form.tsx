"use client";

import { getTextareaProps } from "@conform-to/react";
import { AskedForm } from "@/ui/asked-form";
import { describedBy, Field, TextArea } from "@/ui/field";
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
export function AskForm({ number, name, ...sends }: AskFormProps) {
  return (
    <AskedForm<Fields>
      question="Ask about this number"
      about={name}
      intro="They read it at this number in their report, and on their first page until they answer."
      action={askAbout}
      sends={{ ...sends, number: JSON.stringify(number) }}
      button="Ask"
      waiting="Sending …"
    >
      {({ asks }) => (
        <Field id={asks.id} label="Your question" errors={asks.errors}>
          <TextArea
            {...getTextareaProps(asks)}
            key="asks"
            rows={2}
            dir="auto"
            aria-describedby={describedBy(asks.id)}
          />
        </Field>
      )}
    </AskedForm>
  );
}
