"use client";

import { useEffect } from "react";

/** Removes what was typed from this browser, once the form is sent. */
export function DiscardStored({ storageKey }: { readonly storageKey: string }) {
  useEffect(() => {
    try {
      localStorage.removeItem(storageKey);
    } catch {
      // A browser that refuses storage has stored nothing.
    }
  }, [storageKey]);
  return null;
}
