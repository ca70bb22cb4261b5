"use client";

import { startTransition, useActionState, useEffect, useRef, useState, type FormEvent, type ReactNode } from "react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextArea } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { useStoredText } from "@/ui/use-stored-text";
import { useTypedEarly } from "@/ui/use-typed-early";
import { MAX_TEXT_LENGTH } from "../max-text-length";
import type { SayAnswer } from "../say-answer";

interface SayField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly initial?: string;
  /** One line of text. */
  readonly isLine?: boolean;
}

interface SayFormProps {
  readonly action: (last: SayAnswer | undefined, form: FormData) => Promise<SayAnswer>;
  /** Hidden fields. */
  readonly hidden: readonly (readonly [name: string, value: string])[];
  readonly fields: readonly SayField[];
  /** The storage key under which typed text survives a reload; unique among all forms and people. */
  readonly storageKey: string;
  readonly send: string;
  readonly waiting: string;
  /** Shown instead of the form once it is sent. */
  readonly done: ReactNode;
  /** The form was just opened, so its first field gets the focus. */
  readonly isOpened?: boolean;
  /** Shown next to the button. */
  readonly beside?: ReactNode;
  /** Shown below the fields: what they come to as they stand. */
  readonly below?: (texts: Readonly<Record<string, string>>) => ReactNode;
}

/** A form for free text: stored while it is typed, returned with the text if refused, sent once. */
export function SayForm(props: SayFormProps) {
  const { action, hidden, fields, storageKey, send, waiting, done, isOpened, beside, below } = props;
  const [last, act, isSending] = useActionState(action, undefined);
  const [stored, store] = useStoredText(storageKey);
  const justTyped = useRef<Readonly<Record<string, string>>>({});
  const isDone = last?.status === "sent";
  const doneRef = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!isDone) return;
    store("");
    // The focused button is no longer there.
    doneRef.current?.focus();
  }, [isDone, store]);
  if (isDone)
    return (
      <div ref={doneRef} tabIndex={-1} role="status" className="flex gap-3">
        <span aria-hidden="true" className="font-semibold">
          ✓
        </span>
        {done}
      </div>
    );
  const typed = parseStored(stored);
  const refused = last?.status === "refused" ? last : null;
  const textOf = ({ name, initial = "" }: SayField) => typed[name] ?? refused?.typed[name] ?? initial;
  // React resets a form whose action it calls; calling the action here keeps what was typed.
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => act(form));
  };
  const onText = (name: string, text: string) => {
    // Two fields that were filled before the scripts had loaded report it in the same moment.
    justTyped.current = { ...typed, ...justTyped.current, [name]: text };
    store(JSON.stringify(justTyped.current));
  };
  return (
    <form action={act} onSubmit={onSubmit}>
      {hidden.map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {fields.map((field, index) => (
        <SayText
          key={field.name}
          id={`${storageKey}-${field.name}`}
          field={field}
          text={textOf(field)}
          isFirst={isOpened === true && index === 0}
          error={refused?.errors[field.name]}
          onText={(text) => onText(field.name, text)}
        />
      ))}
      {below?.(Object.fromEntries(fields.map((field) => [field.name, textOf(field)])))}
      {refused?.message ? <Notice tone="problem">{refused.message}</Notice> : null}
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

function SayText({ id, field: { name, label, hint, isLine }, text, error, isFirst, onText }: SayTextProps) {
  const control = useTypedEarly<HTMLTextAreaElement>(text, onText);
  const [isLong, setIsLong] = useState(false);
  return (
    <Field id={id} label={label} hint={hint} errors={error ? [error] : undefined}>
      <TextArea
        ref={control}
        id={id}
        name={name}
        rows={isLine ? 1 : 3}
        dir="auto"
        className={`field-sizing-content max-h-96 ${isLine ? "" : "min-h-24"}`}
        autoFocus={isFirst}
        value={text}
        onChange={({ currentTarget: { value } }) => {
          setIsLong(value.length > 0.9 * MAX_TEXT_LENGTH);
          onText(value);
        }}
        aria-describedby={describedBy(id)}
        aria-invalid={error ? true : undefined}
      />
      {isLong ? (
        <p className="numbers mt-1 text-sm text-soft">
          {text.length.toLocaleString("en")} of {MAX_TEXT_LENGTH.toLocaleString("en")} characters
        </p>
      ) : null}
    </Field>
  );
}

function parseStored(stored: string): Readonly<Record<string, string>> {
  if (stored === "") return {};
  const read: unknown = JSON.parse(stored);
  if (typeof read !== "object" || read === null) return {};
  return Object.fromEntries(Object.entries(read).filter(([, value]) => typeof value === "string"));
}
