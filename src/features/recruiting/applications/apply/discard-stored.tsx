"use client";

import { useEffect } from "react";
import { localStore } from "@/ui/browser-store";

/** Removes what was typed from this browser, once the form is sent. */
export function DiscardStored({ storageKey }: { readonly storageKey: string }) {
  useEffect(() => {
    localStore.write(storageKey, undefined);
  }, [storageKey]);
  return null;
}
