"use client";

import { useEffect } from "react";

/** Takes out of this browser what was typed into a form that is sent now. */
export function ForgetKept({ storageKey }: { readonly storageKey: string }) {
  useEffect(() => {
    try {
      localStorage.removeItem(storageKey);
    } catch {
      // A browser that refuses to store has kept nothing.
    }
  }, [storageKey]);
  return null;
}
