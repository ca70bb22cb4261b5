"use client";

import { useId, useState } from "react";
import { uniqueSlug } from "@/engine/tables";

interface NameFieldProps {
  readonly label: string;
  /** An id: small letters, digits and hyphens. */
  readonly value: string;
  readonly onName: (name: string) => void;
}

/** The short name of a part, an edge or a marker; what is typed becomes one when the field is left. */
export function NameField({ label, value, onName }: NameFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const leave = () => {
    const name = typed?.trim() ?? "";
    setTyped(null);
    const slug = uniqueSlug(name, new Set());
    if (name !== "" && slug !== value) onName(slug);
  };
  return (
    <div className="w-44 max-w-full">
      <label htmlFor={id} className="mb-0.5 block text-sm text-soft">
        {label}
      </label>
      <input
        id={id}
        autoComplete="off"
        value={typed ?? value}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={leave}
        onKeyDown={({ key }) => (key === "Enter" ? leave() : undefined)}
        className="control min-h-11 w-full px-2"
      />
    </div>
  );
}
