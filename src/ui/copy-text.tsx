"use client";

import { Button } from "./button";
import { TextArea } from "./field";
import { useCopy } from "./use-copy";

interface CopyTextProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly button: string;
}

/** A text of several lines to copy, such as a message, with a button or by hand. */
export function CopyText({ id, label, text, button }: CopyTextProps) {
  const { field, copy, says } = useCopy<HTMLTextAreaElement>(text);
  return (
    <div className="grid gap-2">
      <label htmlFor={id} className="font-semibold wrap-anywhere">
        {label}
      </label>
      <TextArea
        ref={field}
        id={id}
        dir="auto"
        value={text}
        rows={text.split("\n").length + 1}
        readOnly
        onFocus={(event) => event.target.select()}
        className="field-sizing-content text-sm"
      />
      <div className="flex flex-wrap items-center gap-3">
        <Button look="quiet" onClick={copy}>
          {button}
        </Button>
        <p aria-live="polite" className="min-h-6 text-sm text-soft">
          {says}
        </p>
      </div>
    </div>
  );
}
