"use client";

import { startTransition, useActionState, useEffect, useRef, useState, type FormEvent, type ReactNode } from "react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextArea } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { useKeptText } from "@/ui/use-kept-text";
import { useTypedEarly } from "@/ui/use-typed-early";
import { LONGEST_SAID } from "../longest-said";
import type { SayAnswer } from "../say-answer";

interface SayField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly initial?: string;
}

interface SayFormProps {
  readonly action: (last: SayAnswer | undefined, form: FormData) => Promise<SayAnswer>;
  /** What is sent along. */
  readonly hidden: readonly (readonly [name: string, value: string])[];
  readonly fields: readonly SayField[];
  /** Under which what is typed outlives a reload; unique among all forms and people. */
  readonly keptAs: string;
  readonly send: string;
  readonly waiting: string;
  /** Stands in the place of the form once it is sent. */
  readonly done: ReactNode;
  /** It was opened to be written in at once. */
  readonly isOpened?: boolean;
  /** Beside the button. */
  readonly beside?: ReactNode;
}

/** Where somebody says something in her own words: kept while she types, refused with what she typed, sent once. */
export function SayForm({ action, hidden, fields, keptAs, send, waiting, done, isOpened, beside }: SayFormProps) {
  const [last, act, isSending] = useActionState(action, undefined);
  const [kept, keep] = useKeptText(keptAs);
  const justTyped = useRef<Readonly<Record<string, string>>>({});
  const isDone = last?.status === "kept";
  const doneSaid = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!isDone) return;
    keep("");
    // The button that had the focus is gone.
    doneSaid.current?.focus();
  }, [isDone, keep]);
  if (isDone)
    return (
      <div ref={doneSaid} tabIndex={-1} role="status" className="flex gap-3">
        <span aria-hidden="true" className="font-semibold">
          ✓
        </span>
        {done}
      </div>
    );
  const typed = readKept(kept);
  const refused = last?.status === "refused" ? last : null;
  // React empties a form whose action it calls itself; handed over by hand, what was typed stays.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => act(form));
  };
  const onText = (name: string, text: string) => {
    // Two fields that were typed into before the scripts had loaded tell so at once.
    justTyped.current = { ...typed, ...justTyped.current, [name]: text };
    keep(JSON.stringify(justTyped.current));
  };
  return (
    <form action={act} onSubmit={onSubmit}>
      {hidden.map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {fields.map((field, at) => (
        <SayText
          key={field.name}
          id={`${keptAs}-${field.name}`}
          field={field}
          text={typed[field.name] ?? refused?.typed[field.name] ?? field.initial ?? ""}
          isFirst={isOpened === true && at === 0}
          error={refused?.errors[field.name]}
          onText={(text) => onText(field.name, text)}
        />
      ))}
      {refused?.says ? <Notice tone="problem">{refused.says}</Notice> : null}
      <div className="flex flex-wrap items-center gap-x-4 gap-y-2">
        <Button type="submit" disabled={isSending}>
          {isSending ? waiting : send}
        </Button>
        {beside}
      </div>
    </form>
  );
}

interface SayTextProps {
  readonly id: string;
  readonly field: SayField;
  readonly text: string;
  readonly error: string | undefined;
  readonly isFirst: boolean;
  readonly onText: (text: string) => void;
}

function SayText({ id, field: { name, label, hint }, text, error, isFirst, onText }: SayTextProps) {
  const control = useTypedEarly<HTMLTextAreaElement>(text, onText);
  const [isLong, setIsLong] = useState(false);
  return (
    <Field id={id} label={label} hint={hint} errors={error ? [error] : undefined}>
      <TextArea
        ref={control}
        id={id}
        name={name}
        rows={3}
        dir="auto"
        className="field-sizing-content max-h-96 min-h-24"
        autoFocus={isFirst}
        value={text}
        onChange={({ currentTarget: { value } }) => {
          setIsLong(value.length > 0.9 * LONGEST_SAID);
          onText(value);
        }}
        aria-describedby={describedBy(id)}
        aria-invalid={error ? true : undefined}
      />
      {isLong ? (
        <p className="numbers mt-1 text-sm text-soft">
          {text.length.toLocaleString("en")} of {LONGEST_SAID.toLocaleString("en")} characters
        </p>
      ) : null}
    </Field>
  );
}

function readKept(kept: string): Readonly<Record<string, string>> {
  if (kept === "") return {};
  const read: unknown = JSON.parse(kept);
  if (typeof read !== "object" || read === null) return {};
  return Object.fromEntries(Object.entries(read).filter(([, value]) => typeof value === "string"));
}
