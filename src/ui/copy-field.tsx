"use client";

import { Button } from "./button";
import { TextInput } from "./field";
import { useCopy } from "./use-copy";

interface CopyFieldProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly button: string;
}

/** A line of text to copy, such as a link, with a button or by hand. */
export function CopyField({ id, label, text, button }: CopyFieldProps) {
  const { field, copy, says } = useCopy<HTMLInputElement>(text);
  return (
    <>
      <label htmlFor={id} className="mb-1 block font-semibold">
        {label}
      </label>
      <div className="flex flex-wrap gap-3">
        <div className="min-w-0 flex-1 basis-64">
          <TextInput ref={field} id={id} value={text} readOnly onFocus={(event) => event.target.select()} />
        </div>
        <Button look="quiet" onClick={copy}>
          {button}
        </Button>
      </div>
      <p aria-live="polite" className="mt-1.5 min-h-6 text-sm text-soft">
        {says}
      </p>
    </>
  );
}
