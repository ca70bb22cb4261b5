"use client";

import { useRef } from "react";
import { Button } from "./button";
import { TextArea } from "./field";
import { useTypedEarly } from "./use-typed-early";

interface PasteFieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly value: string;
  /** What was understood, in a few words; empty where there is nothing yet. */
  readonly understood: string;
  readonly onChange: (text: string) => void;
}

/** A large field for a copied table, or a file of one. */
export function PasteField({ id, label, hint, value, understood, onChange }: PasteFieldProps) {
  const file = useRef<HTMLInputElement>(null);
  const area = useTypedEarly<HTMLTextAreaElement>(value, onChange);
  const isEmpty = value === "";
  return (
    <div>
      <div className="mb-2 flex flex-wrap items-end justify-between gap-x-6 gap-y-2">
        <div className="min-w-0">
          <label htmlFor={id} className="block font-serif text-[1.375rem] font-semibold leading-tight">
            {label}
          </label>
          <p id={`${id}-hint`} className="mt-1 max-w-2xl text-soft">
            {hint}
          </p>
        </div>
        <div className="flex flex-wrap items-center gap-2">
          {isEmpty ? null : (
            <Button look="plain" onClick={() => onChange("")}>
              Clear
            </Button>
          )}
          <Button look="quiet" onClick={() => file.current?.click()}>
            Choose a CSV file
          </Button>
          <input
            ref={file}
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            className="hidden"
            tabIndex={-1}
            aria-label="CSV file"
            onChange={async ({ currentTarget }) => {
              const [chosen] = currentTarget.files ?? [];
              if (chosen) onChange(await chosen.text());
              currentTarget.value = "";
            }}
          />
        </div>
      </div>
      <TextArea
        ref={area}
        id={id}
        aria-describedby={`${id}-hint`}
        value={value}
        rows={isEmpty ? 9 : 4}
        wrap="off"
        spellCheck={false}
        autoComplete="off"
        placeholder="Paste here"
        className="numbers block resize-y whitespace-pre text-sm leading-relaxed"
        onChange={({ currentTarget }) => onChange(currentTarget.value)}
      />
      <p aria-live="polite" className="mt-2 min-h-6 text-sm text-soft">
        {understood}
      </p>
    </div>
  );
}
