"use client";

import { useRef, useState } from "react";
import { Button } from "./button";
import { TextInput } from "./field";

interface CopyFieldProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly button: string;
}

/** A line of text to take along, such as a link: copied by one press, or by hand. */
export function CopyField({ id, label, text, button }: CopyFieldProps) {
  const field = useRef<HTMLInputElement>(null);
  const [says, setSays] = useState("");
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(text);
      setSays("Copied.");
    } catch {
      // Browsers copy for themselves only where the connection is a safe one.
      setSays("Your browser does not let a page copy. The text is marked: copy it by hand.");
    }
  };
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
