"use client";

import { useRef, useState } from "react";

/** Copies a text field with a button. `says` is the result. */
export function useCopy<Field extends HTMLInputElement | HTMLTextAreaElement>(text: string) {
  const field = useRef<Field>(null);
  const [says, setSays] = useState("");
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(text);
      setSays("Copied.");
    } catch {
      // Browsers allow copying only on secure connections.
      setSays("Your browser does not allow copying here. The text is selected: copy it with Ctrl+C or ⌘C.");
    }
  };
  return { field, copy, says };
}
