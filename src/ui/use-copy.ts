"use client";

import { useRef, useState } from "react";

/** Copies a text field by one press. What came of it is told in `says`. */
export function useCopy<Field extends HTMLInputElement | HTMLTextAreaElement>(text: string) {
  const field = useRef<Field>(null);
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
  return { field, copy, says };
}
