"use client";

import { useState, type InputHTMLAttributes } from "react";
import { TextInput } from "@/ui/field";

type PasswordInputProps = Omit<InputHTMLAttributes<HTMLInputElement>, "type">;

/** A password field that can show what is typed. */
export function PasswordInput(props: PasswordInputProps) {
  const [shown, setShown] = useState(false);
  return (
    <div className="relative">
      <TextInput
        {...props}
        type={shown ? "text" : "password"}
        className="pr-20"
        autoCapitalize="none"
        spellCheck={false}
      />
      <button
        type="button"
        aria-pressed={shown}
        aria-label="Show password"
        onClick={() => setShown(!shown)}
        className="absolute inset-y-0 right-0 rounded-md px-4 text-sm font-semibold text-thread hover:text-thread-dark"
      >
        {shown ? "Hide" : "Show"}
      </button>
    </div>
  );
}
