"use client";

import { useSyncExternalStore } from "react";

/** The time zone that the reader's browser is in, such as `Europe/Lisbon`; null until its scripts run. */
export function useBrowserZone(): string | null {
  return useSyncExternalStore(
    () => unchanging,
    browserZone,
    () => null,
  );
}

function browserZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

function unchanging(): void {
  // A browser does not travel while a page is open.
}
