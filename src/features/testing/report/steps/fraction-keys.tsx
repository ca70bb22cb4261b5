"use client";

import { useEffect } from "react";

const FRACTIONS = [
  { key: "½", text: "1/2" },
  { key: "¼", text: "1/4" },
  { key: "¾", text: "3/4" },
  { key: "⅛", text: "1/8" },
  { key: "⅜", text: "3/8" },
  { key: "⅝", text: "5/8" },
  { key: "⅞", text: "7/8" },
];

/** The fractions of an inch that a number keypad cannot type. With them the field gets that keypad. */
export function FractionKeys({ field }: { readonly field: string }) {
  useEffect(() => {
    const input = inputOf(field);
    if (input) input.inputMode = "decimal";
  }, [field]);
  return (
    <div role="group" aria-label="Fractions of an inch" className="fraction-keys [@media(scripting:none)]:hidden">
      {FRACTIONS.map(({ key, text }) => (
        <button
          key={key}
          type="button"
          aria-label={`${text} inch`}
          // The field keeps the keyboard.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => addFraction(field, text)}
        >
          {key}
        </button>
      ))}
    </div>
  );
}

/** Puts a fraction behind the whole inches, in place of another one. */
function addFraction(field: string, text: string): void {
  const input = inputOf(field);
  if (input === null) return;
  const whole = /^\s*\d+(?!\s*\/)(?=\D|$)/.exec(input.value)?.[0].trim();
  input.value = whole === undefined ? text : `${whole} ${text}`;
  input.dispatchEvent(new Event("input", { bubbles: true }));
  input.focus();
}

function inputOf(field: string): HTMLInputElement | null {
  const found = document.getElementById(field);
  return found instanceof HTMLInputElement ? found : null;
}
