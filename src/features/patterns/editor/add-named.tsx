"use client";

import { useId, useState } from "react";
import { Button } from "@/ui/button";
import { useStoredText } from "@/ui/use-stored-text";
import { useEditing } from "./editing";

interface AddNamedProps {
  /** What is added, as `size`. */
  readonly what: string;
  readonly placeholder: string;
  readonly onAdd: (label: string) => void;
}

/** Adds an item by name, from which its id is made; the focus stays for the next one. */
export function AddNamed({ what, placeholder, onAdd }: AddNamedProps) {
  const { patternId } = useEditing("patternId");
  const [label, setLabel] = useStoredText(`new-${what}-${patternId}`);
  const [says, setSays] = useState<{ readonly isFault: boolean; readonly text: string } | null>(null);
  const id = useId();
  const add = () => {
    const name = label.trim();
    if (name === "") return setSays({ isFault: true, text: "Enter a name first." });
    onAdd(name);
    setLabel("");
    setSays({ isFault: false, text: `“${name}” added.` });
  };
  return (
    <div className="min-w-0">
      <label htmlFor={id} className="mb-0.5 block text-sm text-soft">
        New {what}
      </label>
      <div className="flex gap-2">
        <input
          id={id}
          autoComplete="off"
          placeholder={placeholder}
          value={label}
          aria-invalid={says?.isFault ?? false}
          aria-describedby={`${id}-says`}
          onChange={({ target }) => setLabel(target.value)}
          onKeyDown={({ key }) => (key === "Enter" ? add() : undefined)}
          className="control min-h-11 min-w-0 max-w-60"
        />
        <Button look="quiet" onClick={add} aria-label={`Add the ${what}`}>
          <span aria-hidden="true">+</span> Add
        </Button>
      </div>
      <p
        id={`${id}-says`}
        role="status"
        className={`mt-1 text-sm empty:hidden ${says?.isFault ? "font-semibold text-thread" : "text-soft"}`}
      >
        {says === null ? null : says.isFault ? `▲ ${says.text}` : says.text}
      </p>
    </div>
  );
}
