"use client";

import { useId, useState } from "react";
import { ALSO } from "../autosave/also";

interface CarriedChoiceProps {
  readonly legend: string;
  /** `changes`: value of the button, for every measurement that was not answered otherwise. */
  readonly choices: readonly { readonly value: string; readonly label: string; readonly changes: string }[];
  readonly chosen: string | undefined;
}

/** A question asked once for all measurements. Each answer is a button that fills the field of each, with or without scripts. */
export function CarriedChoice({ legend, choices, chosen }: CarriedChoiceProps) {
  const id = useId();
  const [pressed, setPressed] = useState(chosen);
  return (
    <div role="group" aria-labelledby={id} className="min-w-0">
      <p id={id} className="mb-1 font-semibold wrap-anywhere">
        {legend}
      </p>
      <div className="side-by-side">
        {choices.map(({ value, label, changes }) => (
          <button
            key={value}
            type="submit"
            name={ALSO}
            value={changes}
            aria-pressed={pressed === value}
            onClick={() => setPressed(value)}
          >
            <span className="min-w-0 wrap-anywhere">{label}</span>
          </button>
        ))}
      </div>
    </div>
  );
}
